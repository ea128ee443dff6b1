// The search for added lengths against a sweep of the same range at 1 mm, which knows nothing of roots, on
// 200 random shops. Two files take half of them each, so that two processors share them.
//
// SHOPS=200 npx vitest run --project core tests/unit/study/length-crossings
import { describe, expect, it } from 'vitest';
import { findCrossings } from '../../../src/solve/balance.ts';
import type { Network } from '../../../src/solve/network.ts';
import { settleAtFlow } from '../../../src/solve/settle.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import {
  lengthCrossings,
  lengthenable,
  lengthenTo,
  type Lengthening,
  type Threshold,
} from '../../../src/study/length-crossings.ts';
import { finish } from '../../../src/study/progress.ts';
import { gateCoefficients } from '../../../src/shop/network-of.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { type Random, seededRandom } from '../../setup/random-tree.ts';
import { say } from '../../setup/say.ts';
import { randomShop } from '../../setup/random-shop.ts';
import { windingCurve } from '../../setup/winding-curve.ts';

const SHOPS = Number(process.env['SHOPS'] ?? 200);
/** For one half, on a busy machine [ms]. */
const PATIENCE = 600_000;
const LONGEST = 10;
const STEP = 0.001;

/** Tests one half of the shops. */
export function testLengths(half: 'first' | 'second'): void {
  const from = half === 'first' ? 1 : 1 + SHOPS / 2;
  describe(`lengths on the ${half} half of ${SHOPS} random shops`, () => {
    it('are those of the sweep, every one of them', { timeout: PATIENCE }, () => {
      const { faults, passages, leaps, rises, turning } = sweptShops(from, from + SHOPS / 2);
      say(
        `added lengths: ${SHOPS / 2} shops, ${passages} limits, ${faults.length} at fault ` +
          `(${leaps} leaps, ${rises} rising, ${turning} passed more than once)`,
      );
      expect(faults).toEqual([]);
      expect(passages).toBeGreaterThan((5 * SHOPS) / 2);
      expect(Math.min(leaps, rises, turning)).toBeGreaterThan(0);
    });
  });
}

interface Case {
  readonly lengthening: Lengthening;
  readonly thresholds: readonly Threshold[];
}

/** A shop with some gates open, one of its drops to be lengthened, and flows that may be passed. */
function randomCase(seed: number): Case {
  const random = seededRandom(seed);
  const drops = 2 + Math.floor(4 * random());
  const wyes = seed % 3 === 0 ? 'fixed' : 'momentum';
  const shape = seed % 4 === 1 ? 'humped' : 'falling';
  const model = modelOf(randomShop(random, { drops, wyes, curve: shape }));
  const { network, drops: numbers } = model.ducts;
  const target = Math.floor(random() * drops);
  const travels = numbers.map((_, i) => (i === target || random() < 0.4 ? 1 : 0));
  const gates = gateCoefficients(model.ducts, travels);
  const gate = Float64Array.from(network.order, (input) => gates[input]!);
  const section = network.order.indexOf(numbers[target]!.way[0]!);
  const perLength = 1 / model.ducts.sections[numbers[target]!.way[0]!]!.pipe.diameter;
  const curve = seed % 10 === 0 ? windingFor(random, network, gate, drops) : model.curve;
  const lengthening = { network, section, perLength, gate, curve };
  return { lengthening, thresholds: thresholdsFor(random, lengthening) };
}

/** A curve that winds about the system curve, so that lengthening goes from one crossing to another. */
function windingFor(random: Random, network: Network, gate: Float64Array, drops: number) {
  const work = createWorkspace(network);
  const suctionAt = (flow: number) => {
    settleAtFlow(network, work, gate, Math.max(flow, 1e-9));
    return work.suction[0]!;
  };
  return windingCurve(random, suctionAt, 0.15 * drops);
}

/** Three in each section within and about its range, and one just short of its extremes. */
function thresholdsFor(random: Random, lengthening: Lengthening): Threshold[] {
  const { network, gate, curve } = lengthening;
  const work = createWorkspace(network);
  const copy = lengthenable(network);
  const samples = Array.from({ length: 101 }, (_, k) => {
    lengthenTo(copy, lengthening, (LONGEST * k) / 100);
    findCrossings(copy, work, gate, curve);
    return work.flow.slice();
  });
  return Array.from({ length: network.count }, (_, section) => {
    const flows = samples.map((flow) => flow[section]!);
    const [least, most] = [Math.min(...flows), Math.max(...flows)];
    const parts = [random(), random(), 1.3 * random() - 0.15, random() < 0.5 ? 0.02 : 0.98];
    return parts.map((part) => ({ section, flow: least + part * (most - least) }));
  }).flat();
}

/** Each threshold's passages as the sweep sees them: [threshold, step that it is passed in]. */
function sweep({ lengthening, thresholds }: Case): (readonly [number, number])[] {
  const copy = lengthenable(lengthening.network);
  const work = createWorkspace(copy);
  const passages: (readonly [number, number])[] = [];
  let above: boolean[] = [];
  for (let k = 0; k <= LONGEST / STEP; k++) {
    lengthenTo(copy, lengthening, k * STEP);
    findCrossings(copy, work, lengthening.gate, lengthening.curve);
    const now = thresholds.map(({ section, flow }) => work.flow[section]! >= flow);
    if (k > 0) now.forEach((is, t) => is !== above[t] && passages.push([t, k]));
    above = now;
  }
  return passages;
}

/** What came of it. */
interface SweptShops {
  /** Where the search said anything else than the sweep. */
  readonly faults: readonly string[];
  /** How often a threshold was passed; by a leap to another crossing; upwards. */
  readonly passages: number;
  readonly leaps: number;
  readonly rises: number;
  /** Thresholds that were passed more than once. */
  readonly turning: number;
}

/** Goes through the shops of some seeds. */
function sweptShops(from: number, to: number): SweptShops {
  const seen = { passages: 0, leaps: 0, rises: 0, turning: 0 };
  const faults: string[] = [];
  for (let seed = from; seed < to; seed++) {
    const each = randomCase(seed);
    const work = createWorkspace(each.lengthening.network);
    const study = lengthCrossings(each.lengthening, each.thresholds, LONGEST, work);
    const { crossings } = finish(study);
    const swept = sweep(each);
    for (const t of each.thresholds.keys()) {
      const ours = crossings.filter(({ threshold }) => threshold === t);
      const theirs = swept.filter(([threshold]) => threshold === t).map(([, k]) => k);
      const isSame =
        ours.length === theirs.length &&
        ours.every(({ length }, i) => {
          return length <= theirs[i]! * STEP + 1e-6 && length >= (theirs[i]! - 1) * STEP - 1e-6;
        });
      if (!isSame) {
        faults.push(
          `shop ${seed} threshold ${t}: ${ours.map(({ length }) => length).join()} for ${theirs.map((k) => k * STEP).join()}`,
        );
      }
      seen.passages += theirs.length;
      seen.leaps += ours.filter(({ leaps }) => leaps).length;
      seen.rises += ours.filter(({ rises }) => rises).length;
      seen.turning += theirs.length > 1 ? 1 : 0;
    }
  }
  return { faults, ...seen };
}
