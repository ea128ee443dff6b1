// Finds room for the words on the drawing of a run: a speed and a length to each section, where they
// cover no other duct and no other word. Words for which there is no room beside their duct are
// written into it, as on a dimension line. All this depends on the ducts alone, so words stay put
// while gates move.

import type { Box } from './frame.ts';
import { isFree } from './obstacles.ts';
import type { LabelSize } from './place-label.ts';
import type { DrawnSection } from './run-drawing.ts';

/** What could be written at a section, the best first; each is tried until one has room. */
export interface SectionWords {
  /** Room that its speed takes, with and without the word for its state [px]. */
  readonly speed: readonly LabelSize[];
  /** Room that its size and length take, in full and short [px]. */
  readonly length: readonly LabelSize[];
}

/** Words that found their place. */
export interface PlacedWords {
  readonly side: Side;
  /** Which of the sizes it is. */
  readonly form: number;
  readonly box: Box;
}

/** Where the words of a section go; undefined where there is no room. */
export interface SectionLabels {
  readonly speed: PlacedWords | undefined;
  readonly length: PlacedWords | undefined;
}

/** Where words stand: beside their duct, or in it. */
export type Side = 'above' | 'below' | 'in';

type Kind = 'speed' | 'length';

/** Where words are tried, best first. */
const SIDES: Readonly<Record<Kind, readonly Side[]>> = {
  speed: ['above', 'below', 'in'],
  length: ['below', 'above', 'in'],
};

/** Something in the way: a duct, or words; a duct is not in the way of words written into it. */
interface Taken {
  readonly box: Box;
  /** Place of the duct in the list of sections, -1 for words [-] */
  readonly duct: number;
}

/** So much of a duct stays on either side of words written into it [px]. */
const DUCT_BESIDE = 12;
/** Words written into a duct take no more of its level stretch [-]. */
const MOST_OF_DUCT = 0.45;
/** Paper between a duct and its words, and between words [px]. */
const GAP = 2;
/**
 * Where along the level stretch words are tried, as parts of what is left over beside them [-]. On a
 * long one speeds stand at the end towards the drops and lengths at the other, so that both may stand
 * on one side of it.
 */
const SHORT = [0.5, 0, 1, 0.25, 0.75];
/** Long is a stretch with so much left over [px]. */
const LONG_FROM = 32;
const LONG = { speed: [1, 0.5, 0, 0.75, 0.25], length: [0, 0.5, 1, 0.25, 0.75] };

/**
 * Finds room for all words. Speeds come first, those of the longest sections before the others, then
 * lengths: speeds above the duct if they can be, lengths below.
 *
 * @param drawn - the sections
 * @param words - how large their words are [px]
 * @param page - words stay inside it [px]
 * @param taken - what is written there already [px]
 * @returns places, in the order of the sections
 */
export function runLabels(
  drawn: readonly DrawnSection[],
  words: readonly SectionWords[],
  page: Box,
  taken: readonly Box[] = [],
): SectionLabels[] {
  const inTheWay: Taken[] = [
    ...drawn.flatMap((section, duct) => ductBoxes(section).map((box) => ({ box, duct }))),
    ...taken.map((box) => ({ box, duct: -1 })),
  ];
  const written = new Map<string, Box>();
  const order = drawn
    .map(({ level }, i) => ({ i, room: level.to - level.from }))
    .toSorted((a, b) => b.room - a.room)
    .map(({ i }) => i);
  const place = (i: number, kind: Kind, firstForm = 0): PlacedWords | undefined => {
    const section = drawn[i]!;
    for (const side of SIDES[kind]) {
      const others = inTheWay.filter(({ duct }) => side !== 'in' || duct !== i);
      const boxes = [...others.map(({ box }) => box), ...written.values()];
      for (const [form, size] of words[i]![kind].entries()) {
        if (form < firstForm) continue;
        for (const box of candidates(section, kind, size, side)) {
          if (!isInside(box, page) || !isFree(box, { strokes: [], boxes })) continue;
          written.set(`${kind} ${i}`, wider(box));
          return { form, side, box };
        }
      }
    }
    return undefined;
  };
  const speeds = new Map(order.map((i) => [i, place(i, 'speed')]));
  const lengths = new Map(order.map((i) => [i, place(i, 'length')]));
  // A duct shows its state too: a speed without the word for it may leave room for the length.
  for (const i of order) {
    const full = written.get(`speed ${i}`);
    if (lengths.get(i) || full === undefined || speeds.get(i)?.form !== 0) continue;
    written.delete(`speed ${i}`);
    const speed = place(i, 'speed', 1);
    const length = speed && place(i, 'length');
    if (length) {
      speeds.set(i, speed);
      lengths.set(i, length);
    } else {
      written.set(`speed ${i}`, full);
    }
  }
  return drawn.map((_, i) => ({ speed: speeds.get(i), length: lengths.get(i) }));
}

/** With paper on both sides. */
function wider(box: Box): Box {
  return { ...box, left: box.left - 2 * GAP, right: box.right + 2 * GAP };
}

/** The level stretch and the riser as boxes. */
function ductBoxes({ level, foot, weight }: DrawnSection): Box[] {
  const half = weight / 2;
  const boxes = [
    { left: level.from, right: level.to, top: level.y - half, bottom: level.y + half },
    { left: foot.x, right: level.from, top: level.y - half, bottom: level.y + half },
  ];
  if (foot.y === level.y) return boxes;
  const middle = (foot.x + level.from) / 2;
  const top = Math.min(foot.y, level.y) - half;
  const bottom = Math.max(foot.y, level.y) + half;
  return [
    boxes[0]!,
    { left: middle - half - GAP, right: level.from, top: level.y - half, bottom: level.y + half },
    { left: middle - half - GAP, right: middle + half + GAP, top, bottom },
    {
      left: foot.x,
      right: middle + half,
      top: Math.min(foot.y, foot.y + Math.sign(level.y - foot.y) * 9) - half,
      bottom: Math.max(foot.y, foot.y + Math.sign(level.y - foot.y) * 9) + half,
    },
  ];
}

function candidates(
  { level, foot, weight }: DrawnSection,
  kind: Kind,
  { width, height }: LabelSize,
  side: Side,
): Box[] {
  const margin = side === 'in' ? DUCT_BESIDE : 0;
  // Over a wye there is room on the side on which no branch turns off.
  const from = foot.y === level.y ? foot.x + GAP : level.from;
  const spare = level.to - from - width - 2 * margin;
  const top = topAt(side, level.y, weight, height);
  if (side === 'in' && width > MOST_OF_DUCT * (level.to - level.from)) return [];
  const parts = spare <= 0 ? [0.5] : spare < LONG_FROM ? SHORT : LONG[kind];
  return parts.map((part) => {
    const left = from + margin + part * spare;
    return { left, top, right: left + width, bottom: top + height };
  });
}

function topAt(side: Side, y: number, weight: number, height: number): number {
  if (side === 'in') return y - height / 2;
  return side === 'above' ? y - weight / 2 - GAP - height : y + weight / 2 + GAP;
}

function isInside(box: Box, page: Box): boolean {
  return (
    box.left >= page.left &&
    box.right <= page.right &&
    box.top >= page.top &&
    box.bottom <= page.bottom
  );
}
