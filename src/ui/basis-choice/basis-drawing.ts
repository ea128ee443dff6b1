// Where the manometer is for each kind of pressure: a line drawing of the fan with its pipe, and a
// tube with water in it. The drawings are our own.

import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { Curve } from '../../shop/schema/curve-schema.ts';

/** The fan's housing with its wheel, and the pipe on its left. */
const FAN = svg`<circle cx="96" cy="26" r="16" /><circle cx="96" cy="26" r="6" /><path d="M96,10h30v10h-15" />`;
const INLET = svg`<path d="M8,18h73M8,34h73" />`;
const FLOW = svg`<path class="air" d="M14,26h16m-5,-3.5l5,3.5l-5,3.5" />`;

const WHERE: Readonly<Record<Curve['basis']['kind'], SVGTemplateResult>> = {
  'fan-static': svg`${FAN}<path d="M66,20h15M66,32h15" /><path d="M126,8v14" />
    ${FLOW}<path class="tube" d="M120,20v22" />${manometer(112)}`,
  tap: svg`${FAN}${INLET}${FLOW}<path class="tube" d="M52,34v10" />${manometer(44)}`,
  total: svg`${FAN}${INLET}${FLOW}<path class="tube" d="M52,26h-8m8,0v18" /><circle class="tip" cx="44" cy="26" r="1.6" />${manometer(44)}`,
};

/** A bent tube hung under its hose; the water stands higher on the side that is sucked. */
function manometer(left: number): SVGTemplateResult {
  return svg`<path d="M${left + 8},42v14a4,4 0 0 1 -8,0v-12" />
    <path class="water" d="M${left + 8},48v8a4,4 0 0 1 -8,0v-3" />`;
}

/**
 * The drawing of a kind of pressure.
 *
 * @param kind - what the pressures are
 * @returns the picture; words beside it say the same
 */
export function basisDrawing(kind: Curve['basis']['kind']): TemplateResult {
  return html`<svg class="drawing" viewBox="0 0 136 64" width="136" height="64" aria-hidden="true">
    ${WHERE[kind]}
  </svg>`;
}
