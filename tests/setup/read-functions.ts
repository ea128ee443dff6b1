// The exported functions of a source file: name, doc comment, parameters, written return type.
// A small reader for this house's own style; it counts brackets and needs no compiler.
import type { SourceFile } from './source-files.ts';

export interface Parameter {
  /** The name, or the whole pattern of a destructured parameter. */
  readonly name: string;
  /** Its type as written; empty where none is. */
  readonly type: string;
}

export interface ExportedFunction {
  readonly name: string;
  readonly doc: string;
  readonly parameters: readonly Parameter[];
  /** Return type as written; empty where none is. */
  readonly returns: string;
}

const declaration = /^export\s+(?:async\s+)?function\*?\s+(\w+)/gm;
const arrow = /^export\s+const\s+(\w+)\s*=\s*(?:async\s*)?(?=[(<])/gm;

export function exportedFunctions(file: SourceFile): ExportedFunction[] {
  const declared = [...file.bare.matchAll(declaration)].map((match) => read(file, match, 'body'));
  const arrows = [...file.bare.matchAll(arrow)].map((match) => read(file, match, 'arrow'));
  return [...declared, ...arrows].filter((found) => found !== undefined);
}

function read(
  file: SourceFile,
  match: RegExpExecArray,
  form: 'body' | 'arrow',
): ExportedFunction | undefined {
  const { bare } = file;
  let at = match.index + match[0].length;
  if (bare.charAt(at) === '<') at = closing(bare, at) + 1;
  if (bare.charAt(at) !== '(') return undefined;
  const end = closing(bare, at);
  const after = bare.slice(end + 1);
  // A bracket that no arrow and no return type follows is an expression, not a function.
  if (form === 'arrow' && !/^\s*(?:=>|:)/.test(after)) return undefined;
  return {
    name: match[1] ?? '',
    doc: docBefore(file.text, match.index),
    parameters: split(bare.slice(at + 1, end), ',').map(parameter),
    returns: /^\s*:/.test(after) ? typeBefore(after.replace(/^\s*:/, ''), form) : '',
  };
}

/** The comment that ends right before the export. */
function docBefore(text: string, at: number): string {
  const before = text.slice(0, at).trimEnd();
  if (!before.endsWith('*/')) return '';
  const comment = before.slice(before.lastIndexOf('/*'));
  return comment.startsWith('/**')
    ? comment.replace(/^[ \t]*(?:\/\*\*|\*\/|\*) ?|\*\/$/gm, '')
    : '';
}

function parameter(text: string): Parameter {
  const [name = '', ...type] = split(text, ':');
  const [written = ''] = split(type.join(':'), '=');
  return { name: name.replace(/\?|=.*$/s, '').trim(), type: written.trim() };
}

/** The type up to the body's brace or the arrow. A brace where a type is due is an object type. */
function typeBefore(text: string, form: 'body' | 'arrow'): string {
  let at = 0;
  while (at < text.length) {
    const char = text.charAt(at);
    const typeIsDue = /(?:^|[|&<,]|=>)\s*$/.test(text.slice(0, at));
    if (form === 'body' && char === '{' && !typeIsDue) break;
    if (form === 'arrow' && text.startsWith('=>', at)) break;
    at = '([{<'.includes(char) ? closing(text, at) + 1 : at + 1;
  }
  return text.slice(0, at).trim();
}

/** Where the bracket that opens at `at` is closed. The `>` of an arrow closes nothing. */
function closing(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const char = text.charAt(i);
    if ('([{<'.includes(char)) depth += 1;
    if (')]}'.includes(char) || (char === '>' && text.charAt(i - 1) !== '=')) depth -= 1;
    if (depth === 0) return i;
  }
  throw new Error(`a bracket is never closed: ${text.slice(at, at + 60)}`);
}

/** Pieces between separators that stand outside all brackets; no empty last piece. */
function split(text: string, separator: ',' | ':' | '='): string[] {
  const pieces: string[] = [''];
  for (let at = 0; at < text.length; at++) {
    const char = text.charAt(at);
    const end = '([{<'.includes(char) ? closing(text, at) : at;
    const isArrow = text.startsWith('=>', at);
    if (char === separator && !isArrow) pieces.push('');
    else pieces.push(`${pieces.pop() ?? ''}${text.slice(at, end + 1)}`);
    at = end;
  }
  return pieces.at(-1)?.trim() === '' ? pieces.slice(0, -1) : pieces;
}
