// The pipe of a section as a form shows it: what was chosen, its true inside diameter, its wall, and
// where both come from.

import { findPipe } from '../../duct/catalogue.ts';
import { pipeNumbers, pipeWord } from '../../shop/pipe-of.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import { type Overridable, sourceWords } from './figure-source.ts';

export interface PipeView {
  readonly pipe: Pipe;
  /** Inside diameter [m] */
  readonly diameter: number;
  readonly diameterSource: string;
  /** Roughness of the wall [m] */
  readonly roughness: Overridable;
  readonly isHose: boolean;
}

/**
 * A pipe as a form shows it.
 *
 * @param pipe - the pipe as the document states it
 * @returns the view
 * @throws RangeError if the catalogue does not have the pipe
 */
export function pipeView(pipe: Pipe): PipeView {
  const numbers = pipeNumbers(pipe);
  if (numbers === undefined) throw new RangeError('a pipe that is not in the catalogue');
  const { diameter, roughness } = numbers;
  const isHose = pipeWord(pipe) === 'hose';
  const found = pipe.kind === 'catalogue' ? findPipe(pipe.family, pipe.size) : undefined;
  if (found === undefined || pipe.kind === 'custom') {
    const wall = { own: roughness, usual: undefined, source: '' };
    return { pipe, diameter, diameterSource: 'entered for this shop', roughness: wall, isHose };
  }
  return {
    pipe,
    diameter,
    diameterSource: sourceWords(found.diameterSource),
    roughness: {
      own: pipe.roughness,
      usual: found.roughness,
      source: sourceWords(found.roughnessSource),
    },
    isHose,
  };
}
