// Doc comments of the core are part of it: every number has its unit, every example is run.
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleFault, idleExamples, readExamples } from '../setup/doc-examples.ts';
import { docFaults } from '../setup/doc-faults.ts';
import { coreRooms } from '../setup/rooms.ts';
import { repository, sourceFile, sourceFiles } from '../setup/source-files.ts';

const core = sourceFiles().filter((file) => coreRooms.some((room) => room.name === file.room));

describe('the doc comments of the core', () => {
  it('give a unit for every number that goes in or comes out', () => {
    expect(core.flatMap(docFaults)).toEqual([]);
  });

  it('hold no example that runs nothing', () => {
    expect(core.flatMap(idleExamples)).toEqual([]);
  });

  it.each(core.filter((file) => readExamples(file).length > 0))(
    '$path: its examples hold',
    async (file) => {
      const module = (await import(/* @vite-ignore */ join(repository, file.path))) as Record<
        string,
        unknown
      >;
      expect(readExamples(file).flatMap((example) => exampleFault(example, module) ?? [])).toEqual(
        [],
      );
    },
  );
});

describe('the reader of doc comments', () => {
  const faults = (text: string) => docFaults(sourceFile('src/air/sample.ts', text));
  const doc = (...lines: string[]) => `/**\n${lines.map((line) => ` * ${line}\n`).join('')} */\n`;

  it('asks for a comment on each exported function', () => {
    expect(faults('export function f(): void {}')).toEqual([
      'src/air/sample.ts f: has no doc comment',
    ]);
    expect(faults('// A note.\nexport const f = (): void => {};')).toHaveLength(1);
    expect(faults('function f(a: number): number { return a; }')).toEqual([]);
  });

  it('asks for a unit on each numeric parameter and return', () => {
    const text = 'export function f(flow: number, name: string): number {\n  return flow;\n}';
    expect(faults(doc('What.', '@param flow - flow [m³/s]', '@returns it [Pa]') + text)).toEqual(
      [],
    );
    expect(faults(doc('What.', '@param flow - flow', '@returns it [Pa]') + text)).toEqual([
      'src/air/sample.ts f: @param flow has no unit in brackets',
    ]);
    expect(faults(doc('What.', '@param flow - in [0, 1]', '@returns it [-]') + text)).toHaveLength(
      1,
    );
    expect(faults(doc('What.', '@param flow - flow [m³/s]', '@returns it') + text)).toEqual([
      'src/air/sample.ts f: @returns has no unit in brackets',
    ]);
  });

  it('sees arrows, generics, arrays, defaults, destructured and wrapped parameters', () => {
    const arrow = 'export const f = (a: readonly number[], b = (x: number) => x): void => {};';
    expect(faults(doc('What.') + arrow)).toHaveLength(1);
    const generic = 'export function f<T extends { a: number }>(x: T,\n  y: Float64Array,\n): T {}';
    expect(faults(doc('What.', '@param y - ys') + generic)).toHaveLength(1);
    const pattern = 'export function f({ a, b }: { a: number; b: number }): { a: number } {}';
    const good = doc('What.', '@param p.a - a [m]', '@param p.b - b [m]', '@returns a [m]');
    expect(faults(good + pattern)).toEqual([]);
    expect(faults(good.replace('@param p.b - b [m]', '') + pattern)).toHaveLength(1);
    expect(faults(doc('What.') + 'export const limit = (1 + 2) * 3;')).toEqual([]);
  });

  it('refuses a boolean parameter and an unwritten return type', () => {
    const found = faults(`${doc('What.')}export function f(wet: boolean) {}`);
    expect(found).toEqual([
      'src/air/sample.ts f: takes a boolean',
      'src/air/sample.ts f: does not write its return type',
    ]);
  });
});

describe('the runner of examples', () => {
  const run = (...lines: string[]) => {
    const text = `/**\n * @example\n${lines.map((line) => ` * ${line}\n`).join('')} */`;
    const double = (x: number) => ({ twice: 2 * x, name: 'it 2' });
    return readExamples(sourceFile('src/air/sample.ts', text)).map((example) =>
      exampleFault(example, { third: 1 / 3, double }),
    );
  };
  const wrong = [expect.stringContaining('gave')];

  it('compares numbers to the digits written', () => {
    expect(run('third; // => 0.333')).toEqual([undefined]);
    expect(run('third; // => 0.334')).toEqual(wrong);
    expect(run('third * 1e-3; // => 3.33e-4')).toEqual([undefined]);
    expect(run('third * 1e-3; // => 3.34e-4')).toEqual(wrong);
    expect(run('third; // => 0')).toEqual(wrong);
    expect(run('third * 1000; // => 333')).toEqual([undefined]);
    expect(run('nothing; // => 1')).toEqual([expect.stringContaining('stopped')]);
    expect(run('3 * third - 2; // => -1')).toEqual([undefined]);
  });

  it('compares words, lists and objects whole', () => {
    expect(run("double(third); // => { twice: 0.67, name: 'it 2' }")).toEqual([undefined]);
    expect(run('double(third); // => { twice: 0.67 }')).toEqual(wrong);
    expect(run('[1, third]; // => [1, 0.3]')).toEqual([undefined]);
    expect(run("'a'; // => 'b'")).toEqual(wrong);
    expect(run("'4\\'-3'; // => '4\\'-3'")).toEqual([undefined]);
  });

  it('lets earlier lines prepare', () => {
    expect(run('const y = double(1);', 'y.twice; // => 2', 'y.name; // => 3')).toEqual([
      undefined,
      ...wrong,
    ]);
  });
});
