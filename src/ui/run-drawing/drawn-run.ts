// The ducts where they lie on the page, with room found for their words. Costly, so it is worked out
// anew only when the ducts, their window or the zoom change, and kept while gates move.

import type { DrawnSection } from '../../plot/run-drawing.ts';
import { runDrawing } from '../../plot/run-drawing.ts';
import { arrowsBeside } from '../../plot/run-arrows.ts';
import type { SectionLabels } from '../../plot/run-labels.ts';
import { type RunLayout, runLayout } from '../../plot/run-layout.ts';
import type { SectionView } from '../../state/run-view.ts';
import { sameData } from '../../state/same-data.ts';
import { BOLD, textSize } from '../operating-plot/text-size.ts';
import { NAME_INDENT, NAME_SIZE, wordPlaces } from './run-words.ts';

/** All that lies still while gates move. */
export interface DrawnRun {
  /** [px] */
  readonly width: number;
  /** [px] */
  readonly height: number;
  /** Height of a row [px] */
  readonly pitch: number;
  readonly layout: RunLayout;
  readonly sections: readonly DrawnSection[];
  readonly labels: readonly SectionLabels[];
}

/** What it depends on besides the ducts. */
export interface RunPaper {
  /** Size of the window [px] */
  readonly width: number;
  readonly height: number;
  /** How many times its size the drawing is [-] */
  readonly zoom: number;
  /** The widest speed that is ever written. */
  readonly widestSpeed: string;
}

/** Room for the collector on the left [px]. */
const COLLECTOR_ROOM = 36;
/** Names take no more than this part of the width [-]. */
const NAMES_PART = 0.43;
/** What of a section its place and words follow from. */
const SHAPE = ['id', 'name', 'into', 'straight', 'diameter', 'size', 'length'] as const;

/** Keeps the last drawing. */
export class RunDraughtsman {
  #sections: readonly SectionView[] = [];
  #paper: RunPaper | undefined;
  #drawn: DrawnRun | undefined;

  /** The drawing of these ducts on this paper; the very same one if nothing in it has changed. */
  draw(sections: readonly SectionView[], paper: RunPaper): DrawnRun {
    const isKept =
      sameData(paper, this.#paper) &&
      sections.length === this.#sections.length &&
      sections.every((section, i) => liesAlike(section, this.#sections[i]!));
    if (isKept && this.#drawn) return this.#drawn;
    this.#sections = sections;
    this.#paper = paper;
    this.#drawn = drawnRun(sections, paper);
    return this.#drawn;
  }
}

/** Whether a section is drawn in the same place with the same words, but for its speed and state. */
function liesAlike(a: SectionView, b: SectionView): boolean {
  return (
    SHAPE.every((key) => a[key] === b[key]) &&
    a.drop?.id === b.drop?.id &&
    a.drop?.name === b.drop?.name
  );
}

function drawnRun(sections: readonly SectionView[], paper: RunPaper): DrawnRun {
  const layout = runLayout(sections);
  const width = Math.floor(paper.width * paper.zoom);
  const height = Math.floor(paper.height * paper.zoom);
  const names = sections.flatMap(({ drop }) => (drop === undefined ? [] : [nameWidth(drop.name)]));
  const nameRoom = Math.min(NAMES_PART * paper.width, NAME_INDENT + Math.max(0, ...names));
  const page = {
    left: COLLECTOR_ROOM,
    right: Math.round(width - nameRoom),
    top: 0,
    bottom: height,
  };
  const diameters = sections.map(({ diameter }) => diameter);
  const lying = runDrawing(layout, diameters, page);
  const labels = wordPlaces(lying, sections, paper.widestSpeed, page, []);
  return {
    width,
    height,
    pitch: height / layout.rows,
    layout,
    sections: lying.map((each, i) => ({ ...each, arrows: arrowsBeside(each, labels[i]!) })),
    labels,
  };
}

function nameWidth(name: string): number {
  return BOLD * textSize(name, NAME_SIZE).width;
}
