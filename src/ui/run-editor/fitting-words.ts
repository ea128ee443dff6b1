// What each kind of fitting is called, and what a new one is like.

import type { Fitting } from '../../shop/schema/fitting-schema.ts';

export const FITTING_WORDS: Readonly<Record<Fitting['kind'], string>> = {
  bend: 'Smooth bend',
  mitre: 'Mitred bend',
  gored: 'Elbow of pieces',
  plain: 'Other, by its K',
};

export const NEW_FITTINGS: readonly Fitting[] = [
  { kind: 'bend', angle: 90, radius: 1.5 },
  { kind: 'mitre', angle: 45 },
  { kind: 'gored', pieces: 5, radius: 1.5, angle: 90 },
  { kind: 'plain', coefficient: 0.2 },
];
