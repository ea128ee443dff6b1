// Ways to spoil a file or a link: its bytes, its structure, its numbers, its names.

type Chance = () => number;

const NASTY: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  -1e308,
  5e-324,
  4_294_967_296,
  0.1 + 0.2,
  '',
  ' ',
  '0.15',
  'NaN',
  '__proto__',
  'constructor',
  'collector',
  '<img src=x onerror=alert(1)>',
  '"><script>alert(1)</script>',
  '\u202Eright to left',
  '\u0000',
  '😀'.repeat(200),
  'x'.repeat(20_000),
  [],
  {},
  [[[[[[[[[[]]]]]]]]]],
  { __proto__: { polluted: true } },
  { kind: 'plain' },
  { kind: 'custom', diameter: 1e-300, roughness: 0 },
];
const SIGNS = [
  '{',
  '}',
  '[',
  ']',
  '"',
  ',',
  ':',
  '\\',
  '0',
  '9',
  '-',
  'e',
  '.',
  '\u0000',
  'ÿ',
  '\n',
];

const place = (chance: Chance, length: number) => Math.floor(chance() * length);
const pick = <T>(chance: Chance, list: readonly T[]): T => list[place(chance, list.length)]!;

/** A text with one to five of its characters changed, or a stretch of it cut out or doubled. */
export function spoilText(text: string, chance: Chance): string {
  let spoilt = text;
  for (let times = 1 + place(chance, 5); times > 0; times--) {
    const from = place(chance, spoilt.length + 1);
    const to = Math.min(spoilt.length, from + 1 + place(chance, chance() < 0.2 ? 400 : 3));
    const [before, stretch, after] = [
      spoilt.slice(0, from),
      spoilt.slice(from, to),
      spoilt.slice(to),
    ];
    const way = chance();
    if (way < 0.4) spoilt = before + pick(chance, SIGNS) + after;
    else if (way < 0.6) spoilt = before + after;
    else if (way < 0.8) spoilt = before + stretch + stretch + after;
    else if (way < 0.9) spoilt = before + pick(chance, SIGNS) + stretch + after;
    else spoilt = before;
  }
  return spoilt;
}

/** A document with one to three of its values replaced, taken out, doubled, or put elsewhere. */
export function spoilDocument(document: unknown, chance: Chance): unknown {
  const copy: unknown = structuredClone(document);
  for (let times = 1 + place(chance, 3); times > 0; times--) {
    const [holder, key] = somewhere(copy, chance);
    if (holder === undefined) continue;
    const way = chance();
    if (way < 0.5) Reflect.set(holder, key, structuredClone(pick(chance, NASTY)));
    else if (way < 0.65) Reflect.deleteProperty(holder, key);
    else if (way < 0.8 && Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]));
    else if (way < 0.9) Reflect.set(holder, key, deep(1 + place(chance, 60)));
    else {
      const [other, otherKey] = somewhere(copy, chance);
      if (other) Reflect.set(holder, key, structuredClone(Reflect.get(other, otherKey)));
    }
  }
  return copy;
}

/** Any place in a document: what holds it, and its key there. */
function somewhere(document: unknown, chance: Chance): [object | undefined, string] {
  let holder = document;
  for (;;) {
    if (typeof holder !== 'object' || holder === null) return [undefined, ''];
    const keys = Object.keys(holder);
    if (keys.length === 0) return [undefined, ''];
    const key = pick(chance, keys);
    const inner: unknown = Reflect.get(holder, key);
    const isLeaf = typeof inner !== 'object' || inner === null || Object.keys(inner).length === 0;
    if (isLeaf || chance() < 0.25) return [holder, key];
    holder = inner;
  }
}

function deep(levels: number): unknown {
  return levels === 0 ? 1 : chanceless(levels);
}

/** Lists and objects in turn. */
function chanceless(levels: number): unknown {
  return levels % 2 === 0 ? [deep(levels - 1)] : { inner: deep(levels - 1) };
}
