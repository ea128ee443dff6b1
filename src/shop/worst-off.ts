// Which open drop is worst off: what hurts most comes first, as in the verdict, and of two alike the
// one that is further from being well.

import type { DropReport, StateReport } from './state-report.ts';
import type { Verdict } from './verdict.ts';

const GRAVITY: Readonly<Record<Verdict, number>> = {
  settles: 4,
  short: 3,
  tight: 2,
  carries: 1,
  shut: 0,
};

/**
 * The open drop that is worst off.
 *
 * @param report - one state of the gates
 * @returns the drop, or undefined where none is open
 */
export function worstOff(report: Pick<StateReport, 'drops'>): DropReport | undefined {
  const open = report.drops.filter(({ verdict }) => verdict !== 'shut');
  return open.toSorted(
    (a, b) => GRAVITY[b.verdict] - GRAVITY[a.verdict] || wellness(a) - wellness(b),
  )[0];
}

/** The less, the worse; only to be compared among drops of one verdict. */
function wellness({ verdict, flow, need, velocity, slowest }: DropReport): number {
  if (verdict === 'short' && need !== null) return flow / need;
  return verdict === 'tight' ? -velocity : slowest.velocity;
}
