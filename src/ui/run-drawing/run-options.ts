// What is pointed at and stepped to: an unseen target over each duct and each name, in the order of
// the document, each drop after its section.

import { svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { RunStop } from '../../plot/run-steps.ts';
import { RUN_STATE_WORDS } from '../../state/part-reading.ts';
import type { SectionView } from '../../state/run-view.ts';
import { verdictWord } from '../verdict/verdict-word.ts';
import type { DrawnRun } from './drawn-run.ts';
import { isStop } from './run-stops.ts';

/** What the targets show and do. */
export interface RunTargets {
  readonly selected: RunStop | undefined;
  /** The one that the tab key leads to. */
  readonly tabStop: RunStop;
  /** What is read of the one with the focus, in full. */
  readonly focused: { readonly stop: RunStop; readonly words: string } | undefined;
  readonly onEnter: (stop: RunStop) => void;
  readonly onFocus: (stop: RunStop) => void;
  readonly onClick: (stop: RunStop) => void;
}

/** A duct is hit within so much of its middle, unless its neighbour is nearer [px]. */
const HIT = 44;

/**
 * Draws the targets.
 *
 * @param sections - the sections
 * @param drawn - where they lie
 * @param targets - what they show and do
 * @returns SVG content
 */
export function runOptions(
  sections: readonly SectionView[],
  drawn: DrawnRun,
  targets: RunTargets,
): SVGTemplateResult[] {
  return sections.flatMap((section, i) => {
    const { path, level, weight } = drawn.sections[i]!;
    const hit = Math.max(weight, Math.min(HIT, drawn.pitch - 1));
    const own = option(
      { kind: 'section', section: i },
      `${section.name}, ${RUN_STATE_WORDS[section.state]}`,
      targets,
      drawn,
      () => svg`<path class="hit" stroke-width=${hit} d=${path} />`,
    );
    const { drop } = section;
    if (drop === undefined) return [own];
    const name = option(
      { kind: 'drop', section: i },
      `${drop.name}, ${verdictWord(drop.verdict)}`,
      targets,
      drawn,
      () =>
        svg`<rect class="hit" x=${level.to} y=${level.y - hit / 2} width=${drawn.width - level.to} height=${hit} />`,
    );
    return [own, name];
  });
}

function option(
  stop: RunStop,
  words: string,
  targets: RunTargets,
  drawn: DrawnRun,
  shape: () => SVGTemplateResult,
): SVGTemplateResult {
  const { kind, section } = stop;
  const { focused } = targets;
  const label = focused && isStop(focused.stop, kind, section) ? focused.words : words;
  const isSelected = isStop(targets.selected, kind, section);
  const isTabStop = isStop(targets.tabStop, kind, section);
  return svg`${guard(
    [drawn, label, isSelected, isTabStop],
    () => svg`<g
    role="option"
    aria-label=${label}
    aria-selected=${isSelected ? 'true' : 'false'}
    tabindex=${isTabStop ? 0 : -1}
    data-stop="${kind} ${section}"
    @pointerenter=${() => targets.onEnter(stop)}
    @focus=${() => targets.onFocus(stop)}
    @click=${() => targets.onClick(stop)}
  >${shape()}</g>`,
  )}`;
}
