// Spoilt shop files, archives and links. Each is refused with a message or opened, and then it is a
// shop that can be solved and saved; nothing throws, nothing hangs, and what was open stays open where
// it was refused. `npm run endure` does it ten times as often: 20,000.
import { describe, expect, it } from 'vitest';
import { archiveFiles } from '../../../src/shop/archive.ts';
import { deflated } from '../../../src/shop/link/deflate.ts';
import { packShop } from '../../../src/shop/link/pack-shop.ts';
import { openShop } from '../../../src/shop/open-shop.ts';
import { MemoryStore } from '../../../src/shop/store/memory-store.ts';
import { Shelf } from '../../../src/state/shelf.ts';
import { takeArchive, takeLink } from '../../../src/state/take-in.ts';
import { longShop } from '../../setup/long-shop.ts';
import { say } from '../../setup/say.ts';
import { seededChance } from '../../setup/seeded-chance.ts';
import { smallShop } from '../shop/small-shop.ts';
import { demoShop } from '../state/demo-shop.ts';
import { spoilDocument, spoilText } from './mutations.ts';

const isWhole = process.env['ENDURE'] === 'whole';
/** In each of the five ways below. */
const TIMES = isWhole ? 4000 : 400;
/** Time of the processor for one, beyond which it counts as hanging [ms]. */
const HANG = 1000;
const demo = demoShop();
const SHOPS = [smallShop, smallShop, longShop(4), demo];

type Chance = () => number;
type Take = (shelf: Shelf, chance: Chance) => Promise<void> | void;
const pick = <T>(chance: Chance, list: readonly T[]): T =>
  list[Math.floor(chance() * list.length)]!;

const WAYS: readonly (readonly [string, Take])[] = [
  [
    'files, by their bytes',
    (shelf, chance) => {
      const text = spoilText(JSON.stringify(pick(chance, SHOPS), undefined, 1), chance);
      shelf.addFile({ name: 'a.json', text });
    },
  ],
  [
    'files, by their structure',
    (shelf, chance) => {
      const text = JSON.stringify(spoilDocument(pick(chance, SHOPS), chance));
      shelf.addFile({ name: 'a.json', text });
    },
  ],
  [
    'archives',
    (shelf, chance) => {
      const document = spoilDocument(smallShop, chance);
      const [file] = archiveFiles([document, smallShop], '2026-05-02');
      const text = chance() < 0.5 ? spoilText(file!.text, chance) : file!.text;
      takeArchive(shelf, { name: 'a.json', text });
    },
  ],
  [
    'links, by their signs',
    async (shelf, chance) =>
      takeLink(
        shelf,
        spoilText(`#shop=1.${await deflated(packShop(pick(chance, SHOPS)))}`, chance),
      ),
  ],
  [
    'links, by what they hold',
    async (shelf, chance) =>
      takeLink(
        shelf,
        `#shop=1.${await deflated(spoilText(packShop(pick(chance, SHOPS)), chance))}`,
      ),
  ],
];

function freshShelf(): Shelf {
  let count = 0;
  return new Shelf({
    store: new MemoryStore(),
    records: [],
    demo,
    units: 'us',
    newId: () => `id-${++count}`,
    now: () => ++count,
  });
}

describe('spoilt input', () => {
  it.each(WAYS)(`%s: ${TIMES} are refused or opened`, { timeout: 900_000 }, async (name, take) => {
    const seed = Date.now() % 1e9;
    const chance = seededChance(seed);
    let shelf = freshShelf();
    let opened = 0;
    let slowest = 0;
    for (let time = 0; time < TIMES; time++) {
      if (time % 100 === 0) shelf = freshShelf();
      const where = `seed ${seed}, time ${time}`;
      const { session } = shelf.open.value;
      const before = session.shop.value;
      shelf.dismiss();
      const begun = process.cpuUsage();
      await take(shelf, chance);
      const { user, system } = process.cpuUsage(begun);
      slowest = Math.max(slowest, (user + system) / 1000);
      const now = shelf.open.value.session;
      const { notice } = shelf;
      expect(notice.value?.text, where).toBeTruthy();
      if (now === session) {
        expect(session.shop.value, where).toBe(before);
        const problems = notice.value?.problems ?? [];
        expect(problems.length, where).toBeGreaterThan(0);
        for (const problem of problems) expect(problem.message, where).not.toBe('');
      } else {
        opened += 1;
        expect(now.sentence.value, where).not.toMatch(/NaN|undefined|\[object/);
        expect(openShop(JSON.stringify(now.shop.value)).kind, where).toBe('opened');
      }
    }
    expect(slowest, `seed ${seed}`).toBeLessThan(HANG);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
    say(
      `spoilt ${name}: ${opened} of ${TIMES} opened, the others refused; slowest ${slowest.toFixed(0)} ms`,
    );
  });
});
