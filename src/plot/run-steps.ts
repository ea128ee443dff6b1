// Where a key leads on the drawing of a run: left is with the air towards the collector, right
// against it towards the drops, up and down to the neighbour above or below.

import type { RunLayout, RunSection } from './run-layout.ts';

/** Which way to go. */
export type RunWay = 'left' | 'right' | 'up' | 'down' | 'first' | 'last';

/** A place on the drawing: a section by its number, or the drop at its open end. */
export interface RunStop {
  readonly kind: 'section' | 'drop';
  /** Place in the list of sections [-] */
  readonly section: number;
}

/**
 * The next stop.
 *
 * @param sections - the tree
 * @param layout - where they lie
 * @param at - where one is
 * @param way - where to go
 * @returns the next stop; the same one where it goes no further
 */
export function runStep(
  sections: readonly RunSection[],
  layout: RunLayout,
  at: RunStop,
  way: RunWay,
): RunStop {
  switch (way) {
    case 'left':
      return towardsCollector(sections, at);
    case 'right':
      return towardsDrops(sections, at);
    case 'up':
    case 'down':
      return neighbour(layout, at, way === 'up' ? -1 : 1, isEnd(sections));
    case 'first':
      return { kind: 'section', section: sections.findIndex(({ into }) => into < 0) };
    case 'last':
      return lowestDrop(layout, isEnd(sections));
  }
}

function towardsCollector(sections: readonly RunSection[], at: RunStop): RunStop {
  if (at.kind === 'drop') return { kind: 'section', section: at.section };
  const { into } = sections[at.section]!;
  return into < 0 ? at : { kind: 'section', section: into };
}

function towardsDrops(sections: readonly RunSection[], at: RunStop): RunStop {
  if (at.kind === 'drop') return at;
  const inlets = sections.flatMap(({ into }, i) => (into === at.section ? [i] : []));
  const next = inlets.find((i) => sections[i]!.straight) ?? inlets[0];
  return next === undefined
    ? { kind: 'drop', section: at.section }
    : { kind: 'section', section: next };
}

/** The nearest of the same kind in the nearest row above or below. */
function neighbour(
  { sections }: RunLayout,
  at: RunStop,
  sense: number,
  isOpenEnd: (section: number) => boolean,
): RunStop {
  const here = sections[at.section]!;
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  sections.forEach((place, i) => {
    const rows = (place.row - here.row) * sense;
    if (rows <= 0 || (at.kind === 'drop' && !isOpenEnd(i))) return;
    const columns = Math.abs(place.start + place.end - here.start - here.end) / 2;
    const away = rows + (at.kind === 'drop' ? 0 : 2 * columns);
    if (away < least) {
      least = away;
      best = i;
    }
  });
  return best === undefined ? at : { kind: at.kind, section: best };
}

function isEnd(sections: readonly RunSection[]): (section: number) => boolean {
  const fed = new Set(sections.map(({ into }) => into));
  return (section) => !fed.has(section);
}

function lowestDrop({ sections }: RunLayout, isOpenEnd: (section: number) => boolean): RunStop {
  let lowest = -1;
  sections.forEach(({ row }, i) => {
    if (isOpenEnd(i) && (lowest < 0 || row > sections[lowest]!.row)) lowest = i;
  });
  return { kind: 'drop', section: lowest };
}
