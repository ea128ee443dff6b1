// The ducts of the drawing. The state of each is told by its shape: pale while it is still, solid with
// single arrows where it carries, beaded where chips settle, cased with double arrows where it is
// tight. Arrows are cut into the duct and point the way of the air.

import { nothing, svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { RunState } from '../../state/run-view.ts';

/** What of a duct is drawn. */
export interface DuctShape {
  readonly id: string;
  readonly state: RunState;
  readonly path: string;
  readonly weight: number;
  /** Places of arrows along its level stretch [px]. */
  readonly arrows: readonly number[];
  /** Height of that stretch [px]. */
  readonly y: number;
}

/** A casing is so much wider than its duct [px]. */
const CASING = 3.5;
const WALL = 1;
/** An arrow is so deep at least [px]. */
const LEAST_DEPTH = 4;

/**
 * Draws ducts, those with air in them over those without. Walls come before insides, so that ducts
 * open into one another where they meet.
 *
 * @param shapes - where they lie and how they fare
 * @returns SVG content
 */
export function ducts(shapes: readonly DuctShape[]): SVGTemplateResult[] {
  const still = shapes.filter(({ state }) => state === 'still');
  const flowing = shapes.filter(({ state }) => state !== 'still');
  return [still, flowing].map(
    (layer) => svg`${each(layer, wall)}${each(layer, inside)}${each(layer, marks)}`,
  );
}

/** By name, so that a duct that comes to flow, or to fare otherwise, leaves the others' shapes alone. */
function each(layer: readonly DuctShape[], draw: (shape: DuctShape) => SVGTemplateResult): unknown {
  return repeat(
    layer,
    ({ id }) => id,
    (shape) => guard(Object.values(shape), () => draw(shape)),
  );
}

function wall({ state, path, weight }: DuctShape): SVGTemplateResult {
  const width = state === 'tight' ? weight + CASING : weight;
  return svg`<path class="wall ${state}" stroke-width=${width} d=${path} />`;
}

function inside({ state, path, weight }: DuctShape): SVGTemplateResult {
  const gap = state === 'tight' ? weight + CASING - 2 * WALL : 0;
  const width = state === 'tight' ? weight - CASING + 1 : weight - 2 * WALL;
  return svg`${gap > 0 ? svg`<path class="gap" stroke-width=${gap} d=${path} />` : nothing}
    <path class="inside ${state}" stroke-width=${Math.max(1, width)} d=${path} />`;
}

function marks({ state, path, weight, arrows, y }: DuctShape): SVGTemplateResult {
  return svg`${
    state === 'settles'
      ? svg`<path class="chips" stroke-width=${weight * 0.4} stroke-dasharray="0.1 ${weight + 1}" d=${path} />`
      : nothing
  }
  ${state === 'still' ? nothing : arrows.map((x) => arrow(state, x, y, weight))}`;
}

function arrow(state: RunState, x: number, y: number, weight: number): SVGTemplateResult {
  const half = weight / 2 + 2.5;
  const depth = Math.max(LEAST_DEPTH, 0.9 * half);
  const chevron = (at: number) =>
    `M${at + depth / 2},${y - half}L${at - depth / 2},${y}L${at + depth / 2},${y + half}`;
  const d = state === 'tight' ? chevron(x - 2.5) + chevron(x + 2.5) : chevron(x);
  const bead = 0.9 * weight;
  return svg`${
    state === 'settles'
      ? svg`<path class="inside settles" stroke-width=${weight - 1} d="M${x - bead},${y}H${x + bead}" />`
      : nothing
  }<path class="arrow" d=${d} />`;
}
