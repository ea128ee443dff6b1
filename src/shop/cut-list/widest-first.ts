// The order in which a cut list is read: what is made of one kind of pipe together, the widest first.

import type { StockPipe } from './stock-pipe.ts';

/**
 * Puts lines in order: kinds of pipe as they were met, the widest of each first, all else as it was.
 *
 * @param lines - lines of a cut list
 * @param pipeOf - the pipe that a line belongs to
 * @returns the same lines in order
 */
export function widestFirst<Line>(
  lines: readonly Line[],
  pipeOf: (line: Line) => StockPipe,
): Line[] {
  const families = [...new Set(lines.map((line) => pipeOf(line).family))];
  const place = (line: Line) => families.indexOf(pipeOf(line).family);
  return lines.toSorted((a, b) => place(a) - place(b) || pipeOf(b).diameter - pipeOf(a).diameter);
}
