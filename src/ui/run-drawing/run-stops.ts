// Sections and drops of the shop as places on the drawing, and back.

import type { RunStop } from '../../plot/run-steps.ts';
import type { SectionView } from '../../state/run-view.ts';
import type { Part } from '../../state/selected-part.ts';

/**
 * The part at a place of the drawing.
 *
 * @param sections - the sections
 * @param stop - the place
 * @returns the part, or undefined where there is none
 */
export function partAt(
  sections: readonly SectionView[],
  { kind, section }: RunStop,
): Part | undefined {
  const view = sections[section];
  const id = kind === 'drop' ? view?.drop?.id : view?.id;
  return id === undefined ? undefined : { kind, id };
}

/**
 * Where a part is on the drawing.
 *
 * @param sections - the sections
 * @param part - the part, if any
 * @returns its place, or undefined where there is none
 */
export function stopOf(
  sections: readonly SectionView[],
  part: Part | undefined,
): RunStop | undefined {
  if (part === undefined) return undefined;
  const section = sections.findIndex(({ id, drop }) =>
    part.kind === 'drop' ? drop?.id === part.id : id === part.id,
  );
  return section < 0 ? undefined : { kind: part.kind, section };
}

/**
 * Whether a place is a certain one.
 *
 * @param stop - a place, if any
 * @param kind - section or drop
 * @param section - place in the list of sections [-]
 * @returns true if it is
 */
export function isStop(stop: RunStop | undefined, kind: RunStop['kind'], section: number): boolean {
  return stop?.kind === kind && stop.section === section;
}
