// The example collectors of curves/, every one with invented points.

import canister from '../../curves/canister-unit-2hp.json' with { type: 'json' };
import smallCyclone from '../../curves/cyclone-3hp-14in.json' with { type: 'json' };
import largeCyclone from '../../curves/cyclone-5hp-16in.json' with { type: 'json' };
import filterUnit from '../../curves/filter-unit-2p2kw.json' with { type: 'json' };
import blower from '../../curves/forward-curved-blower-1p5hp.json' with { type: 'json' };
import twoBags from '../../curves/two-bag-unit-1p5hp.json' with { type: 'json' };
import wallBag from '../../curves/wall-bag-unit-1hp.json' with { type: 'json' };
import { openCurveDocument } from './open-curve.ts';
import type { Curve } from './schema/curve-schema.ts';

/** By rising power. */
const DOCUMENTS: readonly unknown[] = [
  wallBag,
  twoBags,
  blower,
  canister,
  filterUnit,
  smallCyclone,
  largeCyclone,
];

/**
 * The example curves, small ones first.
 *
 * @returns the curves; each has an id
 * @throws RangeError if one of the files is not in order
 */
export function exampleCurves(): readonly Curve[] {
  return DOCUMENTS.map((document) => {
    const opened = openCurveDocument(document);
    if (opened.kind === 'opened') return opened.curve;
    throw new RangeError(`an example is refused: ${JSON.stringify(opened.problems)}`);
  });
}
