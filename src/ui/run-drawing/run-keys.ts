// What the keys do on the drawing of the run.

import type { RunWay } from '../../plot/run-steps.ts';

/** What a key wishes for. */
export type RunWish =
  | { readonly kind: 'go'; readonly way: RunWay }
  /** Move the drawing by parts of the window. */
  | { readonly kind: 'pan'; readonly across: number; readonly down: number }
  | { readonly kind: 'zoom'; readonly way: 'in' | 'out' | 'whole' }
  | { readonly kind: 'select' }
  | { readonly kind: 'let go' };

const WAYS: Readonly<Record<string, RunWay>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  Home: 'first',
  End: 'last',
};
const PAN = 0.2;
const PANS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-PAN, 0],
  ArrowRight: [PAN, 0],
  ArrowUp: [0, -PAN],
  ArrowDown: [0, PAN],
};
const ZOOMS: Readonly<Record<string, 'in' | 'out' | 'whole'>> = {
  '+': 'in',
  '=': 'in',
  '-': 'out',
  '\u2212': 'out',
  '0': 'whole',
};

/**
 * What a key wishes for.
 *
 * @param event - a key pressed on the drawing
 * @returns the wish, or undefined where the key is none of the drawing's
 */
export function runWish(
  event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>,
): RunWish | undefined {
  const { key } = event;
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const pan = event.shiftKey ? PANS[key] : undefined;
  if (pan) return { kind: 'pan', across: pan[0], down: pan[1] };
  const way = WAYS[key];
  if (way) return { kind: 'go', way };
  const zoom = ZOOMS[key];
  if (zoom) return { kind: 'zoom', way: zoom };
  if (key === 'Enter' || key === ' ') return { kind: 'select' };
  return key === 'Escape' ? { kind: 'let go' } : undefined;
}
