// The outline around what is selected or has the focus: along a duct, or around a name.

import { svg, type SVGTemplateResult } from 'lit';
import type { RunStop } from '../../plot/run-steps.ts';
import type { DrawnRun } from './drawn-run.ts';

/** An outline is so much wider than its duct, and so much of that is paper [px]. */
const OUTSIDE = 10;
const PAPER = 6;
/** Half the height of an outline around a name, at most [px]. */
const HALF_NAME = 12;

/**
 * Draws an outline; it lies under the ducts.
 *
 * @param drawn - the ducts on the page
 * @param stop - what it is around
 * @param tone - why
 * @returns SVG content
 */
export function runHalo(
  drawn: DrawnRun,
  { kind, section }: RunStop,
  tone: 'selected' | 'focused',
): SVGTemplateResult {
  const { path, weight, level } = drawn.sections[section]!;
  if (kind === 'drop') {
    const half = Math.min(HALF_NAME, drawn.pitch / 2);
    return svg`<rect class="name-halo ${tone}" x=${level.to + 2} y=${level.y - half} rx="2"
      width=${drawn.width - level.to - 3} height=${2 * half} />`;
  }
  return svg`<path class="halo ${tone}" stroke-width=${weight + OUTSIDE} d=${path} />
    <path class="halo-paper" stroke-width=${weight + PAPER} d=${path} />`;
}
