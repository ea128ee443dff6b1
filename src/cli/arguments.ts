// What was asked for on the command line.

import { parseArgs } from 'node:util';
import type { UnitSystem } from '../units/quantity.ts';

/** How to call it, in one line. */
const USAGE = 'usage: npm run --silent solve -- FILE [--open "id,id"] [--json] [--metric]';

/** What was asked for, or what is wrong with the question. */
export type Arguments =
  | {
      readonly kind: 'understood';
      readonly file: string;
      /** Ids of the drops to open, or undefined for the usual states. */
      readonly open: readonly string[] | undefined;
      readonly format: 'text' | 'json';
      readonly system: UnitSystem;
    }
  | { readonly kind: 'refused'; readonly message: string };

/**
 * Reads the words of a command line.
 *
 * @param words - the words after the name of the program
 * @returns what was asked for; an empty `--open ""` asks for all gates shut
 */
export function readArguments(words: readonly string[]): Arguments {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        open: { type: 'string' },
        json: { type: 'boolean' },
        metric: { type: 'boolean' },
      },
    });
    const [file] = positionals;
    if (file === undefined || positionals.length > 1) return { kind: 'refused', message: USAGE };
    return {
      kind: 'understood',
      file,
      open: values.open === undefined ? undefined : idsIn(values.open),
      format: values.json === true ? 'json' : 'text',
      system: values.metric === true ? 'metric' : 'us',
    };
  } catch (error) {
    const why = error instanceof Error ? error.message.split('.')[0] : String(error);
    return { kind: 'refused', message: `${why}; ${USAGE}` };
  }
}

function idsIn(list: string): string[] {
  return list
    .split(',')
    .map((id) => id.trim())
    .filter((id) => id !== '');
}
