// What the page's main thread did in each frame, from a trace of Chromium: its processor time, so
// that what else runs on the machine doesn't count. Events lie within one another; only what an inner
// one leaves over counts for the outer.

/** As Chromium writes it; times in [µs]. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  /** Of that, time of the thread's processor. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Work of one frame [ms]. */
export interface FrameWork {
  /** Script, with garbage collection. */
  readonly script: number;
  /** Style and layout. */
  readonly layout: number;
  /** Painting as far as the main thread does it. */
  readonly paint: number;
}

/** The last thing in a frame; what follows belongs to the next. */
const END = 'Layerize';
const SCRIPT = new Set([
  'EvaluateScript',
  'EventDispatch',
  'FireAnimationFrame',
  'FunctionCall',
  'MajorGC',
  'MinorGC',
  'RunMicrotasks',
  'TimerFire',
]);
const LAYOUT = new Set(['HitTest', 'Layout', 'UpdateLayoutTree']);
const PAINT = new Set(['Commit', 'Layerize', 'Paint', 'PrePaint']);

type Kind = keyof FrameWork;

function kindOf(name: string): Kind | undefined {
  if (SCRIPT.has(name)) return 'script';
  if (LAYOUT.has(name)) return 'layout';
  return PAINT.has(name) ? 'paint' : undefined;
}

/** The frames of a trace, but for the first and the last, which may be cut short. */
export function frameWork(trace: readonly TraceEvent[]): FrameWork[] {
  const main = mainThread(trace);
  const events = trace
    .filter(({ pid, tid }) => pid === main.pid && tid === main.tid)
    .toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const frames: Record<Kind, number>[] = [nothingYet()];
  const within: { readonly kind: Kind; readonly end: number }[] = [];
  for (const { name, ts, ph, dur = 0, tdur = dur } of events) {
    const kind = ph === 'X' ? kindOf(name) : undefined;
    const frame = frames.at(-1);
    if (kind === undefined || !frame) continue;
    while (within.length > 0 && within.at(-1)!.end <= ts) within.pop();
    const outer = within.at(-1);
    frame[kind] += tdur / 1000;
    if (outer) frame[outer.kind] -= tdur / 1000;
    within.push({ kind, end: ts + dur });
    if (name === END) frames.push(nothingYet());
  }
  return frames.slice(1, -1);
}

function nothingYet(): Record<Kind, number> {
  return { script: 0, layout: 0, paint: 0 };
}

/** The main thread of the page: of all renderers', the one that ended the most frames. */
function mainThread(trace: readonly TraceEvent[]): { readonly pid: number; readonly tid: number } {
  const counts = new Map<string, { pid: number; tid: number; frames: number }>();
  for (const { name, pid, tid } of trace) {
    if (name !== END) continue;
    const known = counts.get(`${pid}/${tid}`) ?? { pid, tid, frames: 0 };
    known.frames += 1;
    counts.set(`${pid}/${tid}`, known);
  }
  const [most] = [...counts.values()].toSorted((a, b) => b.frames - a.frames);
  if (!most) throw new Error(`the trace holds no ${END}`);
  return most;
}
