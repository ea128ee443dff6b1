// The words on the drawing: the speed in each duct, its size and length, and the drops' names.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { Box } from '../../plot/frame.ts';
import type { DrawnSection } from '../../plot/run-drawing.ts';
import { type PlacedWords, runLabels, type SectionLabels } from '../../plot/run-labels.ts';
import type { SectionView } from '../../state/run-view.ts';
import { textSize } from '../operating-plot/text-size.ts';
import { VERDICT_SHAPES } from '../verdict/verdict-shape.ts';

const WORD_SIZE = 12;
export const NAME_SIZE = 13;
/** Between the end of a duct and its drop's name: room for the shape of the verdict [px]. */
export const NAME_INDENT = 22;
/** Two names closer than this would run into one another [px]. */
const NAME_PITCH = 13.5;
/** The words that may follow a speed. */
const STATE_SUFFIX = { settles: ' settles', tight: ' tight', carries: '', still: '' } as const;

/**
 * Finds room for speeds and lengths. What is reserved for a speed is the widest that it may become.
 *
 * @param drawn - the sections on the page
 * @param sections - what is written at them
 * @param widestSpeed - the widest speed that is ever written
 * @param page - words stay inside it [px]
 * @param taken - where there are names [px]
 * @returns places of the words
 */
export function wordPlaces(
  drawn: readonly DrawnSection[],
  sections: readonly SectionView[],
  widestSpeed: string,
  page: Box,
  taken: readonly Box[],
): SectionLabels[] {
  const size = (text: string) => ({ ...textSize(text, WORD_SIZE), height: WORD_SIZE });
  const speed = [size(`${widestSpeed} settles`), size(widestSpeed)];
  return runLabels(
    drawn,
    sections.map((section) => ({
      speed,
      length: [size(`${section.size} × ${section.length}`), size(section.length)],
    })),
    page,
    taken,
  );
}

/**
 * Writes the words at one section.
 *
 * @param section - what is written
 * @param labels - where there is room
 * @returns SVG content
 */
export function sectionWords(
  { state, speed, size, length }: SectionView,
  labels: SectionLabels,
): SVGTemplateResult {
  const full = labels.length?.form === 0;
  const suffix = labels.speed?.form === 0 ? STATE_SUFFIX[state] : '';
  return svg`<g class=${state}>
    ${labels.speed && state !== 'still' ? word('speed', labels.speed, speed + suffix) : nothing}
    ${labels.length ? word('size', labels.length, full ? `${size} × ${length}` : length) : nothing}
  </g>`;
}

/** Words written into a duct stand on paper of their own. */
function word(kind: string, { side, box }: PlacedWords, text: string): SVGTemplateResult {
  return svg`${
    side === 'in'
      ? svg`<rect class="paper" x=${box.left - 2} y=${box.top} width=${box.right - box.left + 4} height=${box.bottom - box.top} />`
      : nothing
  }<text class=${kind} x=${middle(box)} y=${baseline(box)}>${text}</text>`;
}

/**
 * Which names have room: the selected drop's and those of open drops before the others.
 *
 * @param sections - the sections
 * @param drawn - where they lie
 * @param selected - place of the selected drop's section [-]
 * @returns places of the sections whose drop is named
 */
export function namedDrops(
  sections: readonly SectionView[],
  drawn: readonly DrawnSection[],
  selected: number | undefined,
): ReadonlySet<number> {
  const ends = sections.flatMap(({ drop, state }, i) => {
    if (drop === undefined) return [];
    const rank = i === selected ? 0 : state === 'still' ? 2 : 1;
    return [{ i, rank, y: drawn[i]!.level.y }];
  });
  const kept: { i: number; y: number }[] = [];
  for (const end of ends.toSorted((a, b) => a.rank - b.rank || a.y - b.y)) {
    if (kept.every(({ y }) => Math.abs(y - end.y) >= NAME_PITCH)) kept.push(end);
  }
  return new Set(kept.map(({ i }) => i));
}

/**
 * Writes a drop's name at the open end of its section, with the shape of its verdict.
 *
 * @param section - a section with a drop
 * @param drawn - where it lies
 * @returns SVG content
 */
export function dropName({ drop, state }: SectionView, { level }: DrawnSection): SVGTemplateResult {
  if (drop === undefined) return svg``;
  const tone = state === 'still' ? 'drop' : 'drop open';
  return svg`${
    state === 'still'
      ? nothing
      : svg`<g transform="translate(${level.to + 11},${level.y})">${VERDICT_SHAPES[drop.verdict]}</g>`
  }<text class=${tone} x=${level.to + (state === 'still' ? 6 : NAME_INDENT)} y=${level.y}>${drop.name}</text>`;
}

function middle({ left, right }: Box): number {
  return (left + right) / 2;
}

function baseline({ bottom }: Box): number {
  return bottom - 2;
}
