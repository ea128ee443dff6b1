// Whole networks against flows from elsewhere: two programs that share no code with this one, a
// closed form, and F. M. White's textbook pipes. Each case names its source in the table.
import { describe, expect, it } from 'vitest';
import table from '../../shared/checks-networks.json' with { type: 'json' };
import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { colebrook } from '../../src/duct/colebrook.ts';
import { pchip } from '../../src/math/pchip.ts';
import { type Balance, balance } from '../../src/solve/balance.ts';
import { buildNetwork, type SectionInput } from '../../src/solve/network.ts';
import { createWorkspace } from '../../src/solve/workspace.ts';

interface Section {
  readonly id: string;
  readonly into?: string;
  readonly resistance?: number;
  readonly diameter?: number;
  readonly length?: number;
  readonly roughness?: number;
  readonly coefficient?: number;
}

interface State {
  readonly name: string;
  readonly unit?: string;
  readonly gates: Readonly<Record<string, number>>;
  readonly flows: Readonly<Record<string, number>>;
  readonly velocities: Readonly<Record<string, number>>;
  readonly pressure?: number;
  readonly decimals: {
    readonly flow: number;
    readonly velocity: number;
    readonly pressure: number;
  };
  readonly book?: { readonly flows: Readonly<Record<string, number>>; readonly decimals: number };
}

interface Case {
  readonly name: string;
  readonly source: string;
  readonly density: number;
  readonly viscosity: number;
  readonly roughness: number;
  readonly collector?: { readonly shutOff: number; readonly fall: number; readonly filter: number };
  readonly head?: { readonly metres: number; readonly gravity: number };
  readonly sections: readonly Section[];
  readonly states: readonly State[];
}

const cases: readonly Case[] = table.rows;
const citation = (id: string) => table.sources.find((source) => source.id === id)?.citation ?? '';

/** shutOff − fall·Q² − filter·Q without a spline's error: the entered points are level. */
function curveOf(given: Case): CollectorCurve {
  const { collector, head, density } = given;
  const shutOff = collector?.shutOff ?? density * (head?.gravity ?? 0) * (head?.metres ?? 0);
  return {
    spline: pchip([0, 1], [shutOff, shutOff]),
    flowScale: 1,
    pressureScale: 1,
    quadratic: collector?.fall ?? 0,
    linear: collector?.filter ?? 0,
  };
}

function sectionOf(given: Case, section: Section): SectionInput {
  const ids = given.sections.map(({ id }) => id);
  // A plain resistance is a coefficient of a pipe in which the velocity pressure is ½ρ·Q².
  const diameter = section.diameter ?? Math.sqrt(4 / Math.PI);
  return {
    into: section.into === undefined ? -1 : ids.indexOf(section.into),
    diameter,
    roughness: section.roughness ?? given.roughness,
    frictional: (section.length ?? 0) / diameter,
    fixed: section.coefficient ?? (section.resistance ?? 0) / (given.density / 2),
    join: { kind: 'fixed', coefficient: 0, of: 'own' },
  };
}

function solved(given: Case, state: State): Balance {
  const sections = given.sections.map((section) => sectionOf(given, section));
  const air = { density: given.density, viscosity: given.viscosity, pressure: 101_325 };
  const network = buildNetwork(sections, air, colebrook);
  const gates = Float64Array.from(given.sections, ({ id }) => state.gates[id] ?? 0);
  return balance(network, createWorkspace(network), gates, curveOf(given));
}

const runs = cases.flatMap((given) =>
  given.states.map((state) => ({
    given,
    state,
    title: `${given.name}, ${state.name} (${citation(given.source)})`,
  })),
);

describe.each(runs)('$title', ({ given, state }) => {
  const found = solved(given, state);
  const perUnit = state.unit === 'm³/h' ? 3600 : 1;
  const flow = (id: string) => found.flow[given.sections.findIndex((s) => s.id === id)]! * perUnit;

  it('balances', () => {
    expect(found.residual.worst).toBeLessThan(1e-9);
  });

  it.each(Object.entries(state.flows))('draws through %s what is given: %f', (id, expected) => {
    expect(flow(id)).toBeCloseTo(expected, state.decimals.flow);
  });

  it.each(Object.entries(state.book?.flows ?? {}))(
    'draws through %s the book’s %f',
    (id, value) => {
      expect(flow(id)).toBeCloseTo(value, state.book?.decimals);
    },
  );

  it.each(Object.entries(state.velocities))('runs in %s at %f m/s', (id, expected) => {
    const { diameter = Number.NaN } = given.sections.find((section) => section.id === id) ?? {};
    const velocity = flow(id) / ((Math.PI / 4) * diameter ** 2);
    expect(velocity).toBeCloseTo(expected, state.decimals.velocity);
  });

  it.each(state.pressure === undefined ? [] : [state.pressure])(
    'meets the collector at %f Pa, before the filter',
    (expected) => {
      const { flow: total = 0, suction = 0 } = found.point ?? {};
      const beforeFilter = suction + (given.collector?.filter ?? 0) * total;
      expect(beforeFilter).toBeCloseTo(expected, state.decimals.pressure);
    },
  );
});

it('takes its cases from tables whose sources are known', () => {
  expect(cases.length).toBeGreaterThanOrEqual(6);
  for (const { source } of cases) expect(citation(source)).not.toBe('');
});
