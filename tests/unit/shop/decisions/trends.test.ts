// What wider pipe does, on 1,000 random shops in every state. That a larger main moves more air is a
// law only as long as no loss grows with it. Friction, hoods and fixed coefficients never do. A wye by
// the momentum balance can: an inlet that is faster than the main loses its speed in it, the more the
// wider the main is. So there the law reads: the total flow falls exactly where, at the flows of today,
// the wider main would take more suction, which its wyes are then the cause of.
//
// SHOPS=1000 npx vitest run --project core tests/unit/shop/decisions/trends
import { describe, expect, it } from 'vitest';
import { PIPE_FAMILIES } from '../../../../src/duct/catalogue.ts';
import { editOf } from '../../../../src/shop/decisions/choice.ts';
import { suggestedMain } from '../../../../src/shop/decisions/main-sections.ts';
import { mainPipes } from '../../../../src/shop/decisions/main-sizes.ts';
import { orderedGates } from '../../../../src/shop/decisions/quick-states.ts';
import { dropIn, solvedStates } from '../../../../src/shop/decisions/solved-states.ts';
import { travelsWhenOpen, usualStates } from '../../../../src/shop/gate-state.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../../src/shop/shop-model.ts';
import { findCrossings } from '../../../../src/solve/balance.ts';
import { lossesAt } from '../../../../src/solve/losses.ts';
import type { Network } from '../../../../src/solve/network.ts';
import { randomShop } from '../../../setup/random-shop.ts';
import { type Random, seededRandom } from '../../../setup/random-tree.ts';
import { say } from '../../../setup/say.ts';

const SHOPS = Number(process.env['SHOPS'] ?? 1000);
/** A balance closes to a billionth; what differs by less is alike [-]. */
const ALIKE = 1e-9;
const FAMILY = 'galvanised-spiral';
const SIZES = PIPE_FAMILIES.find(({ id }) => id === FAMILY)!.sizes.toSorted(
  (a, b) => a.diameter - b.diameter,
);
/** Sizes of which some pairs are the same pipe by two names. */
const wider = (diameter: number) => SIZES.filter((size) => size.diameter > diameter + 1e-6);

interface Pair {
  readonly narrow: Shop;
  readonly wide: Shop;
}

function shopOf(random: Random, seed: number, wyes: 'momentum' | 'fixed'): Shop {
  const drops = 2 + Math.floor(5 * random());
  return randomShop(random, { drops, wyes, curve: seed % 3 === 0 ? 'humped' : 'falling' });
}

/** A shop with a main of one size, and with one of the next or the one after. */
function mains(seed: number, wyes: 'momentum' | 'fixed'): Pair {
  const random = seededRandom(seed);
  const shop = shopOf(random, seed, wyes);
  const main = suggestedMain(shop);
  const from = SIZES[Math.floor(random() * (SIZES.length - 6))]!;
  const to = wider(from.diameter)[Math.floor(2 * random())]!;
  const withMain = (size: string) =>
    editOf({ kind: 'pipes', pipes: mainPipes(shop, main, FAMILY, size) })(shop);
  return { narrow: withMain(from.id), wide: withMain(to.id) };
}

/** Sum of loss × flow at some flows [W], and the part of it that is lost in wyes. */
function powerAt(network: Network, gate: Float64Array, flow: Float64Array) {
  const { section, join } = lossesAt(network, gate, flow);
  const sum = (loss: Float64Array) => loss.reduce((all, each, i) => all + each * flow[i]!, 0);
  return { all: sum(section) + sum(join), wyes: sum(join) };
}

/** Each state of both: total flows, and what both mains take at the flows of the narrow one. */
function compared({ narrow, wide }: Pair) {
  const [before, after] = [modelOf(narrow), modelOf(wide)];
  return usualStates(narrow).map((state) => {
    const gate = orderedGates(before.ducts, travelsWhenOpen(narrow.drops, state.open));
    const flowIn = (model: typeof before) => {
      expect(findCrossings(model.ducts.network, model.work, gate, model.curve)).not.toEqual([]);
      return model.work.flow.slice();
    };
    const flows = [flowIn(before), flowIn(after)] as const;
    const power = [before, after].map(({ ducts }) => powerAt(ducts.network, gate, flows[0]));
    const gain = flows[1][0]! / flows[0][0]! - 1;
    const [today, then] = power as [(typeof power)[0], (typeof power)[0]];
    return { gain, takesMore: then.all > today.all, wyesTakeMore: then.wyes > today.wyes };
  });
}

describe(`a larger main, on ${SHOPS} random shops`, () => {
  it('never lowers the total flow where wyes have fixed coefficients', () => {
    const gains: number[] = [];
    for (let seed = 1; seed <= SHOPS; seed++) {
      gains.push(...compared(mains(seed, 'fixed')).map(({ gain }) => gain));
    }
    expect(Math.min(...gains)).toBeGreaterThan(-ALIKE);
    expect(Math.max(...gains)).toBeGreaterThan(0.1);
  });

  it('lowers it by the momentum balance exactly where its wyes take more than its friction saves', () => {
    const seen = { states: 0, lower: 0, least: 0 };
    const faults: string[] = [];
    for (let seed = 1; seed <= SHOPS; seed++) {
      for (const { gain, takesMore, wyesTakeMore } of compared(mains(seed, 'momentum'))) {
        seen.states += 1;
        if (Math.abs(gain) < ALIKE) continue;
        if (gain < 0) seen.lower += 1;
        seen.least = Math.min(seen.least, gain);
        if (gain < 0 !== takesMore) faults.push(`shop ${seed}: ${gain}, takes more: ${takesMore}`);
        if (gain < 0 && !wyesTakeMore) faults.push(`shop ${seed}: ${gain}, and not for its wyes`);
      }
    }
    say(
      `larger mains, momentum wyes: ${seen.states} states, the total flow falls in ${seen.lower}, ` +
        `by ${(-100 * seen.least).toFixed(1)} % at most, each time by what the wyes take`,
    );
    expect(faults).toEqual([]);
    expect(seen.lower).toBeGreaterThan(0);
  });
});

describe.each(['fixed', 'momentum'] as const)(`a wider branch, %s wyes, ${SHOPS} shops`, (wyes) => {
  it('draws more air itself, though most often at a lower speed', () => {
    const seen = { states: 0, slower: 0, faster: 0 };
    let least = Number.POSITIVE_INFINITY;
    for (let seed = 1; seed <= SHOPS; seed++) {
      const random = seededRandom(seed);
      const shop = shopOf(random, seed, wyes);
      const drop = shop.drops[Math.floor(random() * shop.drops.length)]!;
      const { pipe } = shop.sections.find(({ id }) => id === drop.into)!;
      const size = SIZES.find(({ id }) => pipe.kind === 'catalogue' && id === pipe.size)!;
      const next = wider(size.diameter)[0]!.id;
      const pipes = mainPipes(shop, [drop.into], FAMILY, next);
      const after = solvedStates(editOf({ kind: 'pipes', pipes })(shop));
      solvedStates(shop).forEach(({ state, report }, i) => {
        if (!state.open.includes(drop.id)) return;
        const [was, is] = [dropIn(report, drop.id), dropIn(after[i]!.report, drop.id)];
        least = Math.min(least, is.flow / was.flow - 1);
        seen.states += 1;
        if (is.velocity < was.velocity) seen.slower += 1;
        else seen.faster += 1;
      });
    }
    expect(least).toBeGreaterThan(-ALIKE);
    expect(seen.slower).toBeGreaterThan(0.9 * seen.states);
    // Where friction is most of what a branch loses, and the suction at its wye hardly changes, a wider
    // pipe runs faster too: its friction goes with length over diameter.
    expect(seen.faster).toBeGreaterThan(0);
  });
});

describe('why the question is asked', () => {
  it('more air through a larger main may no longer carry the chips in it', () => {
    let [more, settles] = [0, 0];
    for (let seed = 1; seed <= 200; seed++) {
      const { narrow, wide } = mains(seed, 'fixed');
      const after = solvedStates(wide);
      solvedStates(narrow).forEach(({ report, state }, i) => {
        const id = state.open[0]!;
        const [was, is] = [dropIn(report, id), dropIn(after[i]!.report, id)];
        if (!(is.flow > was.flow)) return;
        more += 1;
        const { low } = narrow.carryingRange;
        if (was.slowest.velocity >= low && is.slowest.velocity < low) settles += 1;
      });
    }
    expect(more).toBeGreaterThan(500);
    expect(settles).toBeGreaterThan(5);
  });
});
