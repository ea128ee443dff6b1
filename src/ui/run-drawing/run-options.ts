// What is pointed at and stepped to: an unseen target over each duct and each name, in the order of
// the document, each drop after its section.

import { svg, type SVGTemplateResult } from 'lit';
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
      svg`<path class="hit" stroke-width=${hit} d=${path} />`,
    );
    const { drop } = section;
    if (drop === undefined) return [own];
    const name = option(
      { kind: 'drop', section: i },
      `${drop.name}, ${verdictWord(drop.verdict)}`,
      targets,
      svg`<rect class="hit" x=${level.to} y=${level.y - hit / 2} width=${drawn.width - level.to} height=${hit} />`,
    );
    return [own, name];
  });
}

function option(
  stop: RunStop,
  words: string,
  targets: RunTargets,
  shape: SVGTemplateResult,
): SVGTemplateResult {
  const { kind, section } = stop;
  const { focused } = targets;
  return svg`<g
    role="option"
    aria-label=${focused && isStop(focused.stop, kind, section) ? focused.words : words}
    aria-selected=${isStop(targets.selected, kind, section) ? 'true' : 'false'}
    tabindex=${isStop(targets.tabStop, kind, section) ? 0 : -1}
    data-stop="${kind} ${section}"
    @pointerenter=${() => targets.onEnter(stop)}
    @focus=${() => targets.onFocus(stop)}
    @click=${() => targets.onClick(stop)}
  >${shape}</g>`;
}
