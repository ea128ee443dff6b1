// The reduction of a throttle setting as lines to be read: what, how, and what comes of it.

import type {
  PointUncertainty,
  UncertainInput,
} from '../../curve/throttle-test/point-uncertainty.ts';
import type { ReductionSteps } from '../../curve/throttle-test/reduction-steps.ts';
import { formatQuantity } from '../../units/format.ts';
import { type Quantity, toDisplay, type UnitSystem, unitLabel } from '../../units/quantity.ts';

/** One step. */
export interface StepLine {
  readonly what: string;
  readonly how: string;
  readonly result: string;
}

const INPUT_WORDS: Readonly<Record<UncertainInput, string>> = {
  bore: 'the inside diameter',
  'air readings': 'the speed readings',
  'centre factor': 'the part that the mean is of the centre',
  density: 'the density of the air',
  suction: 'the suction reading',
};

/**
 * Every step from readings to flow and suction.
 *
 * @param steps - the reduced setting
 * @param system - the units to speak in
 * @returns the lines, in the order of the work
 */
export function stepLines(steps: ReductionSteps, system: UnitSystem): StepLine[] {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const { readings, velocity } = steps;
  const density = {
    what: 'Density of the air',
    how: 'ρ, in this test',
    result: show('density', steps.density),
  };
  const suction = {
    what: 'Total suction',
    how: `${show('pressure', steps.static)} at the tap, less the velocity pressure`,
    result: show('pressure', steps.suction),
  };
  if (readings === null || velocity === null) {
    return [
      density,
      { what: 'Flow', how: 'the pipe was closed', result: show('flow', 0) },
      suction,
    ];
  }
  const speeds = velocity.velocities.map(
    (speed) => formatQuantity('velocity', system, speed).number,
  );
  const isPressure = readings.quantity === 'velocity-pressure';
  const isCorrected = velocity.velocities.some((speed, i) => speed !== readings.values[i]);
  return [
    density,
    {
      what: 'Area of the bore',
      how: 'π/4 × inside diameter²',
      result: areaText(steps.area, system),
    },
    ...(isPressure || isCorrected
      ? [
          {
            what: speeds.length === 1 ? 'Speed' : 'Speeds',
            how: isPressure ? '√(2 × velocity pressure / ρ)' : 'shown speed × its density / ρ',
            result: `${speeds.join(', ')} ${formatQuantity('velocity', system, 0).unit}`,
          },
        ]
      : []),
    readings.place === 'centre'
      ? {
          what: 'Mean speed',
          how: `${show('velocity', velocity.average)} at the centre × ${velocity.factor}`,
          result: show('velocity', velocity.mean),
        }
      : {
          what: 'Mean speed',
          how: `of ${speeds.length} speeds, not of their pressures`,
          result: show('velocity', velocity.mean),
        },
    {
      what: 'Velocity pressure',
      how: '½ρ × mean speed²',
      result: show('pressure', steps.velocityPressure),
    },
    { what: 'Flow', how: 'area × mean speed', result: show('flow', steps.flow) },
    suction,
  ];
}

/**
 * What makes a point uncertain, the most first. Each is what the point would be off by, about 95 % of
 * the time, if nothing else were off.
 *
 * @param uncertainty - of the point
 * @param system - the units to speak in
 * @returns a line for each input that counts
 */
export function doubtLines({ contributions }: PointUncertainty, system: UnitSystem): StepLine[] {
  const weight = (flow: number, suction: number) => flow + suction / 1000;
  return contributions
    .filter(({ flow, suction }) => flow > 0 || suction > 0)
    .toSorted((a, b) => weight(b.flow, b.suction) - weight(a.flow, a.suction))
    .map(({ input, flow, suction }) => ({
      what: `± by ${INPUT_WORDS[input]}`,
      how: flow > 0 ? `flow ± ${formatQuantity('flow', system, 2 * flow).text}` : '',
      result:
        suction > 0 ? `suction ± ${formatQuantity('pressure', system, 2 * suction).text}` : '',
    }));
}

/** A bore is so small an area that it needs its digits, not its decimals. */
function areaText(area: number, system: UnitSystem): string {
  return `${toDisplay('area', system, area).toPrecision(4)}\u2009${unitLabel('area', system)}`;
}
