// The pipe of a section as numbers: from the catalogue, or as the document states it.

import { findPipe, PIPE_FAMILIES } from '../duct/catalogue.ts';
import type { Pipe } from './schema/section-schema.ts';

/** What the solver needs of a pipe. */
export interface PipeNumbers {
  /** Inside diameter [m] */
  readonly diameter: number;
  /** Roughness of the wall [m] */
  readonly roughness: number;
}

/**
 * Inside diameter and roughness of a pipe. A roughness in the document comes before the catalogue's.
 *
 * @param pipe - the pipe as the document states it
 * @returns diameter [m] and roughness [m], or undefined if the catalogue does not have the pipe
 */
export function pipeNumbers(pipe: Pipe): PipeNumbers | undefined {
  if (pipe.kind === 'custom') return { diameter: pipe.diameter, roughness: pipe.roughness };
  const found = findPipe(pipe.family, pipe.size);
  if (found === undefined) return undefined;
  return { diameter: found.diameter, roughness: pipe.roughness ?? found.roughness };
}

/**
 * What a pipe is called in a sentence.
 *
 * @param pipe - the pipe as the document states it
 * @returns 'hose' for the hoses of the catalogue, 'pipe' for all else
 */
export function pipeWord(pipe: Pipe): 'pipe' | 'hose' {
  if (pipe.kind === 'custom') return 'pipe';
  return PIPE_FAMILIES.find(({ id }) => id === pipe.family)?.kind ?? 'pipe';
}
