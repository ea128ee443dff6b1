// The source files of the repository and the room that each one lies in.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { maskSource } from './mask-source.ts';

export const repository = join(import.meta.dirname, '..', '..');

export interface SourceFile {
  /** From the repository's root, with forward slashes: `src/math/pchip.ts`. */
  readonly path: string;
  /** First folder under src/; empty for a file that lies in no room. */
  readonly room: string;
  readonly text: string;
  /** The text with comments blanked. */
  readonly code: string;
  /** The text with comments and the insides of strings blanked. */
  readonly bare: string;
}

export function sourceFile(path: string, text: string): SourceFile {
  const [, room = '', file] = path.split('/');
  return { path, room: file === undefined ? '' : room, text, ...maskSource(text) };
}

export function sourceFiles(): SourceFile[] {
  return readdirSync(join(repository, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted()
    .map((path) =>
      sourceFile(relative(repository, path).split(sep).join('/'), readFileSync(path, 'utf8')),
    );
}
