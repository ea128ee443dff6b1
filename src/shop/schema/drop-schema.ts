// A drop: where air enters the ducts at a machine, through a hood and past a gate.

import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { idOf, nameOf, note } from './text.ts';
import { transitionSchema } from './transition-schema.ts';
import { inWords, z } from './zod.ts';

const hood = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: z.literal('table'),
        id: idOf('Id of the hood in shared/hoods.json, such as plain-end'),
      })
      .register(inWords, { description: 'A hood of the table.' }),
    z
      .strictObject({
        kind: z.literal('coefficient'),
        coefficient: numberFrom({
          what: 'entry loss coefficient on the velocity pressure in the port',
          unit: '[-]',
          low: 0,
          high: 10_000,
        }),
      })
      .register(inWords, { description: 'A hood by its entry loss coefficient.' }),
    z
      .strictObject({
        kind: z.literal('measured'),
        suction: numberFrom({
          what: 'static suction just behind the hood, a positive number',
          unit: '[Pa]',
          low: 0,
          high: 50_000,
        }),
        velocity: numberFrom({
          what: 'mean speed there at the same time',
          unit: '[m/s]',
          low: 0.1,
          high: 200,
        }),
      })
      .register(inWords, {
        description:
          'A hood by a reading taken in air of this shop; the suction is at least the velocity pressure.',
      }),
  ])
  .register(inWords, { id: 'hood', description: 'What the air enters through.' });

const gate = z
  .strictObject({
    travel: numberFrom({
      what: 'how far the blade is pulled out when this drop is open; 0 counts as 1, fully',
      unit: '[-]',
      low: 0,
      high: 1,
    }),
    leak: z.exactOptional(
      numberFrom({
        what: 'leak of the shut gate, as a fraction of the area of the pipe',
        unit: '[-]',
        low: 1e-5,
        high: 0.5,
        otherwise: '0.005, a shop-made gate',
      }),
    ),
    slotLoss: z.exactOptional(
      numberFrom({
        what: 'loss coefficient of the slot, which stays when the gate is fully open',
        unit: '[-]',
        low: 0,
        high: 100,
        otherwise: '0.1',
      }),
    ),
  })
  .register(inWords, {
    id: 'gate',
    description: 'A blast gate. Left out: the drop is always open.',
  });

export const dropSchema = z
  .strictObject({
    id: idOf('Id of the drop, unique among drops'),
    name: nameOf('Name of the drop, usually the machine'),
    into: idOf('Id of the section that this drop feeds; no other drop or section may feed it'),
    hood,
    port: z.exactOptional(
      numberFrom({
        what: 'inside diameter of the machine’s port, to which the hood coefficient refers',
        unit: '[m]',
        low: 0.01,
        high: 2,
        otherwise: 'that of the section',
      }),
    ),
    transition: z.exactOptional(transitionSchema),
    gate: z.exactOptional(gate),
    need: z.exactOptional(
      numberFrom({
        what: 'flow that catches the dust here',
        unit: '[m³/s]',
        low: 0,
        high: 100,
        otherwise: 'the guideline for the machine, if one is named',
      }),
    ),
    machine: z.exactOptional(idOf('Id of the machine in shared/machine-flows.json')),
    note: z.exactOptional(note),
  })
  .register(inWords, { id: 'drop', description: 'Where air enters the ducts at a machine.' });

/** A drop. */
export type Drop = Immutable<z.infer<typeof dropSchema>>;
/** What the air of a drop enters through. */
export type Hood = Drop['hood'];
/** The gate of a drop. */
export type Gate = NonNullable<Drop['gate']>;
