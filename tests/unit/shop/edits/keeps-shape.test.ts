// What is looked at after an edit, against the whole document checked anew.
import { describe, expect, it } from 'vitest';
import { shopSchema } from '../../../../src/shop/schema/shop-schema.ts';
import { keepsShape } from '../../../../src/shop/edits/keeps-shape.ts';
import { seededChance } from '../../../setup/seeded-chance.ts';
import { demoShop } from '../../state/demo-shop.ts';

const TIMES = 1500;
const before: unknown = demoShop();
const OTHERS = [
  0,
  -1,
  3,
  1e9,
  Number.NaN,
  '',
  'table-saw',
  true,
  null,
  undefined,
  [],
  {},
  [1],
  { kind: 'none' },
];

type Chance = () => number;
const pick = <T>(chance: Chance, list: readonly T[]): T =>
  list[Math.floor(chance() * list.length)]!;

/** The same with one thing in it changed, anywhere; all else is shared with it. */
function changed(value: unknown, chance: Chance): unknown {
  if (Array.isArray(value) && chance() < 0.85) return changedList(value, chance);
  if (typeof value === 'object' && value !== null && chance() < 0.95) {
    return changedRecord(value as Readonly<Record<string, unknown>>, chance);
  }
  if (typeof value === 'number' && chance() < 0.6) return value * (0.5 + chance());
  return pick(chance, OTHERS);
}

function changedList(list: readonly unknown[], chance: Chance): unknown {
  const at = Math.floor(chance() * list.length);
  const way = chance();
  if (list.length === 0 || way < 0.1) return [...list, pick(chance, OTHERS)];
  if (way < 0.2) return list.toSpliced(at, 1);
  if (way < 0.25) return list.slice(0, 1);
  return list.with(at, changed(list[at], chance));
}

function changedRecord(record: Readonly<Record<string, unknown>>, chance: Chance): unknown {
  const keys = Object.keys(record);
  const key = pick(chance, keys);
  const way = chance();
  if (way < 0.08)
    return Object.fromEntries(Object.entries(record).filter(([each]) => each !== key));
  if (way < 0.14)
    return { ...record, [pick(chance, ['colour', 'note', '__proto__x'])]: pick(chance, OTHERS) };
  return { ...record, [key]: changed(record[key], chance) };
}

describe('an edited document', () => {
  it(`is taken where the whole of it would be, and only there, in ${TIMES} random changes`, () => {
    const chance = seededChance(11);
    const seen = { right: 0, wrong: 0 };
    for (let i = 0; i < TIMES; i++) {
      const next = changed(before, chance);
      const isRight = shopSchema.safeParse(next).success;
      expect(keepsShape(shopSchema, before, next), JSON.stringify(next)).toBe(isRight);
      seen[isRight ? 'right' : 'wrong'] += 1;
    }
    expect(Math.min(seen.right, seen.wrong)).toBeGreaterThan(TIMES / 10);
  });
});
