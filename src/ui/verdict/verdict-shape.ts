// One shape a verdict, drawn around the origin and about 12 px across, so that the same shape marks
// a drop, its speed and a pipe in the drawing:
// settles, a heap that sank down; carries, a ring that lets air through; tight, a pinched pipe;
// short, a cup half full; shut, a bar across.

import { svg, type SVGTemplateResult } from 'lit';
import type { Verdict } from '../../shop/verdict.ts';

/** SVG content around the origin; it needs the verdict shapes' styles. */
export const VERDICT_SHAPES: Readonly<Record<Verdict, SVGTemplateResult>> = {
  settles: svg`<path class="shape settles" d="M-6,-5H6L0,4Z" /><path class="shape-line settles" d="M-6,6H6" />`,
  tight: svg`<path class="shape tight" d="M-6,-5.5L0,-1L6,-5.5V5.5L0,1L-6,5.5Z" />`,
  short: svg`<path class="shape short" d="M-5,0H5A5,5 0 0 1 -5,0Z" /><circle class="shape-line short" r="5" />`,
  carries: svg`<circle class="shape-line carries" r="4" />`,
  shut: svg`<path class="shape-line shut" d="M-5,0H5" />`,
};
