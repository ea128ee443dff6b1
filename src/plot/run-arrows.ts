// Which arrows of a duct are drawn: those that no words are written over.

import type { DrawnSection } from './run-drawing.ts';
import type { SectionLabels } from './run-labels.ts';

/** Half the room that an arrow keeps for itself [px]. */
const ARROW_ROOM = 8;

/**
 * The arrows of a section that no words are written over. Where none is left, one in the longest
 * stretch that is free.
 *
 * @param section - a section
 * @param labels - its words
 * @returns places along its level stretch [px]
 */
export function arrowsBeside({ level, arrows }: DrawnSection, labels: SectionLabels): number[] {
  const over = [labels.speed, labels.length].filter((words) => words?.side === 'in');
  const free = arrows.filter((x) =>
    over.every(
      (words) => words && (x + ARROW_ROOM < words.box.left || x - ARROW_ROOM > words.box.right),
    ),
  );
  if (free.length > 0 || arrows.length === 0) return free;
  const ends = [
    level.from,
    ...over.flatMap((words) => (words ? [words.box.left, words.box.right] : [])),
    level.to,
  ].toSorted((a, b) => a - b);
  const gaps = ends.slice(1).map((to, i) => ({ at: (to + ends[i]!) / 2, room: to - ends[i]! }));
  const between = gaps.filter((_, i) => i % 2 === 0).toSorted((a, b) => b.room - a.room);
  return between[0] && between[0].room >= 2 * ARROW_ROOM ? [between[0].at] : [];
}
