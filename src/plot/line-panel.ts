// A small ruled panel for lines of one quantity over another, both from 0, and the paths in it.

import type { Quantity, UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import type { Box, Place } from './frame.ts';

/** What is on an axis, and its value at the far end, above 0 [SI]. */
export interface AxisWish {
  readonly quantity: Quantity;
  readonly end: number;
}

/** A panel with its scales. */
export interface LinePanel {
  readonly inner: Box;
  readonly across: Axis;
  readonly up: Axis;
  /** Value [SI] to its place from the left [px]. */
  readonly x: (value: number) => number;
  /** Value [SI] to its place from the top [px]. */
  readonly y: (value: number) => number;
}

/** One tick for about so much of an axis [px]. */
const SPACING = { across: 90, up: 44 };

/**
 * Rules a panel.
 *
 * @param inner - where its axes stand [px]
 * @param across - what is on the lower axis
 * @param up - what is on the upright one
 * @param system - units of the ticks
 * @returns the panel
 * @throws RangeError if an axis doesn't reach above 0
 */
export function linePanel(
  inner: Box,
  across: AxisWish,
  up: AxisWish,
  system: UnitSystem,
): LinePanel {
  const { left, right, top, bottom } = inner;
  const count = (room: number, spacing: number) => Math.max(2, Math.round(room / spacing));
  return panelAt(inner, {
    across: axis(across.quantity, system, across.end, count(right - left, SPACING.across)),
    up: axis(up.quantity, system, up.end, count(bottom - top, SPACING.up)),
  });
}

/**
 * Puts axes at hand at another place.
 *
 * @param inner - where the lines may go [px]
 * @param axes - of a panel of the same size
 * @returns the panel
 */
export function panelAt(inner: Box, { across, up }: Pick<LinePanel, 'across' | 'up'>): LinePanel {
  const { left, right, top, bottom } = inner;
  const tenth = (place: number) => Math.round(10 * place) / 10;
  return {
    inner,
    across,
    up,
    x: (value) => tenth(left + ((right - left) * value) / across.end),
    y: (value) => tenth(bottom - ((bottom - top) * value) / up.end),
  };
}

/**
 * A line from place to place, broken where there is none.
 *
 * @param places - in order; undefined breaks the line [px]
 * @returns a path; empty without two places side by side
 */
export function brokenPath(places: readonly (Place | undefined)[]): string {
  let path = '';
  places.forEach((place, i) => {
    if (place === undefined) return;
    const before = places[i - 1];
    const after = places[i + 1];
    if (before === undefined && after === undefined) return;
    path += `${before === undefined ? 'M' : 'L'}${place.x},${place.y}`;
  });
  return path;
}

/** Low and high end of a band at one place across [px]. */
export interface BandPlace {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/**
 * The outline of a band.
 *
 * @param places - from left to right [px]
 * @returns a closed path; empty for fewer than two places
 */
export function bandPath(places: readonly BandPlace[]): string {
  if (places.length < 2) return '';
  const there = places.map(({ x, low }) => `${x},${low}`);
  const back = places.toReversed().map(({ x, high }) => `${x},${high}`);
  return `M${[...there, ...back].join('L')}Z`;
}
