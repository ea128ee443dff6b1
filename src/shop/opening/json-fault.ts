// Finds the first fault in a JSON text and says where it is. Engines word their errors differently
// and not all give a line; this reads the text once, without recursion, so that no depth of brackets
// can exhaust the stack, and it also finds a key written twice, which engines let pass.
//
// 1. RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format.

/** The first fault of a JSON text. */
export interface JsonFault {
  /** Line, from 1. */
  readonly line: number;
  /** Column in that line, from 1. */
  readonly column: number;
  /** What is wrong there. */
  readonly message: string;
}

type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | 'colon' | 'comma or end' | 'nothing';

const WANTED: Readonly<Record<Expected, string>> = {
  value: 'a value',
  'value or ]': 'a value or "]"',
  key: 'a key in double quotes',
  'key or }': 'a key in double quotes or "}"',
  colon: 'a colon after the key',
  'comma or end': 'a comma or a closing bracket',
  nothing: 'the end of the file',
};

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /[\p{L}\p{N}_+.-]+/uy;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/**
 * The first fault of a JSON text: broken syntax, a key that stands twice in one object, or brackets
 * deeper than allowed. A text without a fault is one that JSON.parse accepts.
 *
 * @param text - the text of the file
 * @param maxDepth - how many brackets may be open at once [-]
 * @returns the fault with its line and column, or undefined if there is none
 */
export function findJsonFault(text: string, maxDepth: number): JsonFault | undefined {
  const open: (Set<string> | 'list')[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    at = endOf(SPACE, text, at);
    const sign = text.charAt(at);
    if (sign === '') {
      if (expected === 'nothing') return undefined;
      return faultAt(text, at, `the file ends too early: ${WANTED[expected]} was expected`);
    }
    const inside = open.at(-1);

    if (expected === 'comma or end' && sign === ',') {
      expected = inside === 'list' ? 'value' : 'key';
      at += 1;
    } else if (expected === 'colon' && sign === ':') {
      expected = 'value';
      at += 1;
    } else if (closes(sign, expected, inside)) {
      open.pop();
      expected = open.length === 0 ? 'nothing' : 'comma or end';
      at += 1;
    } else if (expected.startsWith('value') && (sign === '{' || sign === '[')) {
      if (open.length === maxDepth) {
        return faultAt(text, at, `more than ${maxDepth} brackets are open inside one another`);
      }
      open.push(sign === '{' ? new Set() : 'list');
      expected = sign === '{' ? 'key or }' : 'value or ]';
      at += 1;
    } else if (expected.startsWith('key') && sign === '"' && inside instanceof Set) {
      const end = endOfString(text, at);
      if (typeof end !== 'number') return end;
      const key = String(JSON.parse(text.slice(at, end)));
      if (inside.has(key)) {
        return faultAt(
          text,
          at,
          `the key ${shown(text.slice(at, end))} stands twice in one object`,
        );
      }
      inside.add(key);
      expected = 'colon';
      at = end;
    } else if (expected.startsWith('value')) {
      const end = sign === '"' ? endOfString(text, at) : endOfPlainValue(text, at);
      if (typeof end !== 'number') return end;
      expected = open.length === 0 ? 'nothing' : 'comma or end';
      at = end;
    } else {
      const found = shown(String.fromCodePoint(text.codePointAt(at) ?? 0));
      return faultAt(text, at, `${WANTED[expected]} was expected, not ${found}`);
    }
  }
}

function closes(sign: string, expected: Expected, inside: Set<string> | 'list' | undefined) {
  if (inside === undefined) return false;
  if (inside === 'list') {
    return sign === ']' && (expected === 'value or ]' || expected === 'comma or end');
  }
  return sign === '}' && (expected === 'key or }' || expected === 'comma or end');
}

function endOf(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

function endOfString(text: string, start: number): number | JsonFault {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return faultAt(text, at, 'a text in quotes runs over the end of its line');
    if (code === 0x5c) {
      const end = endOf(ESCAPE, text, at);
      if (end === at) return faultAt(text, at, 'a backslash must be written twice in a text');
      at = end;
    } else {
      at += 1;
    }
  }
  return faultAt(text, start, 'a text in quotes is never closed');
}

function endOfPlainValue(text: string, at: number): number | JsonFault {
  const end = Math.max(endOf(WORD, text, at), at + 1);
  const word = text.slice(at, end);
  if (word === 'true' || word === 'false' || word === 'null') return end;
  if (endOf(NUMBER, text, at) === end) return end;
  return faultAt(
    text,
    at,
    `${shown(word)} is no number, text in double quotes, true, false or null`,
  );
}

function shown(text: string): string {
  const clean = text.replace(/\p{C}/gu, '�');
  return clean.length <= 40 ? clean : `${clean.slice(0, 39)}…`;
}

function faultAt(text: string, at: number, message: string): JsonFault {
  let line = 1;
  let start = 0;
  for (let end = text.indexOf('\n'); end !== -1 && end < at; end = text.indexOf('\n', start)) {
    line += 1;
    start = end + 1;
  }
  return { line, column: at - start + 1, message };
}
