import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findJsonFault } from '../../../../src/shop/opening/json-fault.ts';

const signs = Array.from('{}[]:,"\\01e-.tn \n\u0000ü');

const accepts = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('findJsonFault', () => {
  it('finds none exactly where the engine reads the text, on JSON with one character changed', () => {
    const damaged = fc
      .tuple(fc.json({ maxDepth: 4 }), fc.nat(), fc.constantFrom(...signs))
      .map(([json, at, sign]) => {
        const place = at % (json.length + 1);
        return json.slice(0, place) + sign + json.slice(place + 1);
      });
    let broken = 0;
    fc.assert(
      fc.property(fc.oneof(damaged, fc.json(), fc.string()), (text) => {
        const fault = findJsonFault(text, 100);
        if (fault?.message.includes('stands twice')) return;
        if (fault !== undefined) broken += 1;
        expect(fault === undefined).toBe(accepts(text));
      }),
      { numRuns: 3000, seed: 11 },
    );
    expect(broken).toBeGreaterThan(500);
  });

  it('counts lines and columns from 1', () => {
    expect(findJsonFault('{\n  "a": 1,\n  "b": x\n}', 9)).toMatchObject({ line: 3, column: 8 });
    expect(findJsonFault('x', 9)).toMatchObject({ line: 1, column: 1 });
    expect(findJsonFault('[1,\n\n', 9)).toMatchObject({ line: 3, column: 1 });
  });

  it('sees a key that is written twice, also in two spellings, but not in two objects', () => {
    expect(findJsonFault('{"a": 1, "\\u0061": 2}', 9)?.message).toContain('stands twice');
    expect(findJsonFault('{"a": {"a": 1}, "b": [{"a": 1}, {"a": 2}]}', 9)).toBeUndefined();
  });

  it('allows brackets as deep as it is told and no deeper', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
    expect(findJsonFault(nested(9), 9)).toBeUndefined();
    expect(findJsonFault(nested(10), 9)).toMatchObject({ line: 1, column: 10 });
    expect(findJsonFault('{"a":'.repeat(1_000_000), 9)).toMatchObject({ column: 46 });
  });
});
