// The picture of the run: collector, outlines, ducts, words and names. While a gate moves, only the
// speeds are written anew; the rest waits until it would look different.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { RunStop } from '../../plot/run-steps.ts';
import type { SectionView } from '../../state/run-view.ts';
import type { DrawnRun } from './drawn-run.ts';
import { ducts } from './run-duct.ts';
import { runHalo } from './run-halo.ts';
import { isStop } from './run-stops.ts';
import { dropName, namedDrops, sectionWords } from './run-words.ts';

/** What is looked at. */
export interface RunMarks {
  readonly selected: RunStop | undefined;
  readonly hovered: RunStop | undefined;
  readonly focused: RunStop | undefined;
}

/**
 * Draws the picture.
 *
 * @param sections - how they fare
 * @param drawn - where they lie
 * @param marks - what is looked at
 * @returns SVG content
 */
export function runPicture(
  sections: readonly SectionView[],
  drawn: DrawnRun,
  { selected, hovered, focused }: RunMarks,
): SVGTemplateResult {
  const fares = sections.map(({ state }) => state).join();
  const verdicts = sections.map(({ drop }) => drop?.verdict ?? '').join();
  const chosen = selected?.kind === 'drop' ? selected.section : undefined;
  return svg`<g aria-hidden="true">
    ${guard([drawn], () => collector(sections, drawn))}
    ${selected ? runHalo(drawn, selected, 'selected') : nothing}
    ${focused && focused.section < sections.length ? runHalo(drawn, focused, 'focused') : nothing}
    ${guard([drawn, fares], () =>
      ducts(
        sections.map(({ id, state }, i) => {
          const { path, weight, arrows, level } = drawn.sections[i]!;
          return { id, state, path, weight, arrows, y: level.y };
        }),
      ),
    )}
    ${sections.map((section, i) =>
      guard([drawn, section.state, section.speed], () => sectionWords(section, drawn.labels[i]!)),
    )}
    ${guard([drawn, fares, verdicts, chosen, hovered, focused], () => {
      const named = namedDrops(sections, drawn.sections, chosen);
      const isShown = (i: number) =>
        named.has(i) || isStop(hovered, 'drop', i) || isStop(focused, 'drop', i);
      return sections.map((section, i) =>
        isShown(i) ? dropName(section, drawn.sections[i]!) : nothing,
      );
    })}
  </g>`;
}

/** A cyclone seen from the side, its inlet where the run ends. */
function collector(sections: readonly SectionView[], drawn: DrawnRun): SVGTemplateResult {
  const { y } = drawn.sections[sections.findIndex(({ into }) => into < 0)]!.foot;
  return svg`<path class="collector" d="M6,${y - 9}H31V${y + 9}L22,${y + 30}H15L6,${y + 9}Z" />`;
}
