// Runs the `@example` lines of doc comments: `expression; // => value`.
// Lines without an arrow prepare for those that follow. Numbers must agree to the digits written.
import type { SourceFile } from './source-files.ts';

export interface Example {
  readonly place: string;
  /** Lines before this one in its block. */
  readonly before: string;
  readonly expression: string;
  readonly expected: string;
}

const block = /@example\b([^]*?)(?=\n\s*\*\s*@|\*\/)/g;

export function readExamples(file: SourceFile): Example[] {
  return [...file.text.matchAll(block)].flatMap((match) => {
    const before: string[] = [];
    return (match[1] ?? '').split('\n').flatMap((raw) => {
      const line = raw.replace(/^\s*\* ?/, '');
      const [, expression, expected] = /^(.*?);?\s*\/\/ => (.+)$/.exec(line) ?? [];
      if (expression !== undefined && expected !== undefined) {
        const place = `${file.path} ${expression.trim()}`;
        return [{ place, before: before.join('\n'), expression, expected }];
      }
      if (!/^\s*(?:```|import\b)/.test(line)) before.push(line);
      return [];
    });
  });
}

/** Blocks that show something and run nothing. */
export function idleExamples(file: SourceFile): string[] {
  return [...file.text.matchAll(block)]
    .filter((match) => !(match[1] ?? '').includes('// => '))
    .map((match) => `${file.path} has an example without "// =>": ${(match[1] ?? '').trim()}`);
}

/** Undefined when the example holds, otherwise what it gave instead. */
export function exampleFault(
  example: Example,
  exports: Readonly<Record<string, unknown>>,
): string | undefined {
  try {
    const got = evaluate(`${example.before}\nreturn (${example.expression});`, exports);
    const wanted = evaluate(`return (${withDigits(example.expected)});`, { written });
    return agrees(got, wanted) ? undefined : `${example.place} gave ${JSON.stringify(got)}`;
  } catch (error) {
    return `${example.place} stopped: ${String(error)}`;
  }
}

function evaluate(body: string, scope: Readonly<Record<string, unknown>>): unknown {
  const names = Object.keys(scope);
  // oxlint-disable-next-line typescript/no-implied-eval -- running what a comment says is the job
  const run = Function(...names, `'use strict';\n${body}`) as (...values: unknown[]) => unknown;
  return run(...Object.values(scope));
}

class Written {
  readonly value: number;
  readonly slack: number;
  constructor(digits: string) {
    const [mantissa = '', exponent = '0'] = digits.toLowerCase().split('e');
    const decimals = mantissa.split('.')[1]?.length;
    this.value = Number(digits);
    // A small whole number is meant exactly, but for rounding; others to half a unit in the last.
    const isCount = decimals === undefined && exponent === '0' && Math.abs(this.value) < 100;
    this.slack = isCount ? 1e-12 : 0.500001 * 10 ** (Number(exponent) - (decimals ?? 0));
  }
}

const written = (digits: string) => new Written(digits);

/** Marks each number outside quotes, so that its digits are not lost. */
const withDigits = (text: string) =>
  text.replace(
    /('(?:\\.|[^'\\])*'|"(?:\\.|[^"\\])*")|(?<![\w.])-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/gi,
    (number, quoted: string | undefined) => quoted ?? `written('${number}')`,
  );

function agrees(got: unknown, wanted: unknown): boolean {
  if (wanted instanceof Written) {
    return typeof got === 'number' && Math.abs(got - wanted.value) <= wanted.slack;
  }
  if (typeof wanted !== 'object' || wanted === null) return Object.is(got, wanted);
  if (typeof got !== 'object' || got === null) return false;
  const keys = Object.keys(wanted);
  return (
    Object.keys(got).length === keys.length &&
    keys.every((key) => agrees(Reflect.get(got, key), Reflect.get(wanted, key)))
  );
}
