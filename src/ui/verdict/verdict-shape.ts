// One shape a verdict, drawn around the origin and about 12 px across, so that the same shape marks
// a drop, its speed and a pipe in the drawing:
// settles, a heap that sank down; carries, a ring that lets air through; tight, a pinched pipe;
// short, a cup half full; shut, a bar across.

import { svg, type SVGTemplateResult } from 'lit';
import type { Verdict } from './verdict-words.ts';

/**
 * The shape of a verdict.
 *
 * @param verdict - what is said of a drop or a section
 * @returns SVG content around the origin; it needs {@link verdictShapeStyles}
 */
export function verdictShape(verdict: Verdict): SVGTemplateResult {
  switch (verdict) {
    case 'settles':
      return svg`<path class="shape settles" d="M-6,-5H6L0,4Z" /><path class="shape-line settles" d="M-6,6H6" />`;
    case 'tight':
      return svg`<path class="shape tight" d="M-6,-5.5L0,-1L6,-5.5V5.5L0,1L-6,5.5Z" />`;
    case 'short':
      return svg`<path class="shape short" d="M-5,0H5A5,5 0 0 1 -5,0Z" /><circle class="shape-line short" r="5" />`;
    case 'carries':
      return svg`<circle class="shape-line carries" r="4" />`;
    case 'shut':
      return svg`<path class="shape-line shut" d="M-5,0H5" />`;
  }
}
