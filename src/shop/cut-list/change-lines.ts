// What joins two pipes in a row that differ: a reducer where the size changes, also where nobody asked
// for it, and a connector where only the kind of pipe does. At a wye each inlet has its own size, so
// there only the kind may differ.

import type { Transition } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { AT_FLANGE, type SectionTree } from '../section-tree.ts';
import { type Counted, countAlike } from './counted.ts';
import { diameterKey, isSameSize, pipeKey, type StockPipe, stockPipe } from './stock-pipe.ts';

/** One end of a reducer or connector: a pipe, or a machine's port, of which the bore is known [m]. */
export type ChangeEnd =
  | { readonly kind: 'pipe'; readonly pipe: StockPipe }
  | { readonly kind: 'port'; readonly diameter: number };

/** Reducers or connectors that are alike. */
export interface ChangeLine extends Counted {
  readonly kind: 'reducer' | 'connector';
  /** As the air flows, at the first that was met; turned round it is the same part. */
  readonly from: ChangeEnd;
  readonly to: ChangeEnd;
  /** How a reducer changes; undefined for the cone of 30 degrees that is put in by itself. */
  readonly transition: Transition | undefined;
}

/** The cone that is put in where nothing is said [deg] */
const USUAL_CONE = 30;

/**
 * The reducers and connectors of a shop.
 *
 * @param shop - a shop in order
 * @param tree - its tree
 * @returns a line for each pair of ends
 */
export function changeLines(
  shop: Pick<Shop, 'sections' | 'drops'>,
  tree: SectionTree,
): ChangeLine[] {
  const { sections, drops } = shop;
  const pipes = sections.map(({ pipe }) => stockPipe(pipe));
  const atPorts = drops.flatMap(({ port, into, transition }) => {
    const pipe = pipes[tree.position.get(into) ?? -1];
    if (port === undefined || pipe === undefined || port === pipe.diameter) return [];
    return [lineOf('reducer', { kind: 'port', diameter: port }, pipeEnd(pipe), transition)];
  });
  const between = sections.flatMap((section, at) => {
    const next = tree.into[at] ?? AT_FLANGE;
    const [pipe, into] = [pipes[at], pipes[next]];
    if (pipe === undefined || into === undefined || pipeKey(pipe) === pipeKey(into)) return [];
    const isAtWye = (tree.inlets[next] ?? []).length > 1;
    if (isAtWye && pipe.family === into.family) return [];
    if (isAtWye) return [lineOf('connector', pipeEnd(pipe), wyeEnd(into, pipe), undefined)];
    const kind = isSameSize(pipe, into) ? 'connector' : 'reducer';
    return [lineOf(kind, pipeEnd(pipe), pipeEnd(into), section.transition)];
  });
  return countAlike([...between, ...atPorts]);
}

function pipeEnd(pipe: StockPipe): ChangeEnd {
  return { kind: 'pipe', pipe };
}

/** The inlet of a wye: made as the wye is, in the size of what comes in. */
function wyeEnd(wye: StockPipe, inlet: StockPipe): ChangeEnd {
  const { family, kind, roughness } = wye;
  const { size, diameter } = inlet;
  return { kind: 'pipe', pipe: { family, kind, roughness, size, diameter } };
}

function lineOf(
  kind: ChangeLine['kind'],
  from: ChangeEnd,
  to: ChangeEnd,
  transition: Transition | undefined,
): ChangeLine {
  const ends = [endKey(from), endKey(to)].toSorted().join('-to-');
  const shape = kind === 'connector' ? '' : `${shapeKey(transition)}-`;
  return { key: `${kind}-${shape}${ends}`, amount: 1, kind, from, to, transition };
}

function endKey(end: ChangeEnd): string {
  return end.kind === 'pipe' ? pipeKey(end.pipe) : `port-${diameterKey(end.diameter)}`;
}

function shapeKey(transition: Transition | undefined): string {
  if (transition === undefined) return `cone-${USUAL_CONE}`;
  return transition.kind === 'taper' ? `cone-${transition.angle}` : transition.kind;
}
