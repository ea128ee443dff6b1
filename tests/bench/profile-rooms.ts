// Script time by the room of src/ that it was spent in, from a CPU profile of the built page. The
// scripts' source maps say which source a place in a bundle came from.

import { readFileSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { join } from 'node:path';

/** As Chromium writes it; times in [µs]. */
export interface CpuProfile {
  readonly nodes: readonly {
    readonly id: number;
    readonly children?: readonly number[];
    readonly callFrame: {
      readonly functionName: string;
      readonly url: string;
      readonly lineNumber: number;
      readonly columnNumber: number;
    };
  }[];
  readonly samples?: readonly number[];
  readonly timeDeltas?: readonly number[];
}

/**
 * Time by room, or by package for what isn't ours [ms]. What the browser does within a call counts for
 * the caller; what it does of itself is left out.
 */
export function timeByRoom(profile: CpuProfile, folder: string): Map<string, number> {
  const maps = new Map<string, SourceMap | undefined>();
  const mapOf = (url: string): SourceMap | undefined => {
    if (!maps.has(url)) maps.set(url, readMap(url, folder));
    return maps.get(url);
  };
  const parents = new Map(
    profile.nodes.flatMap(({ id, children = [] }) => children.map((child) => [child, id] as const)),
  );
  const rooms = new Map<number, string | undefined>();
  // A node comes after the one that called it.
  for (const { id, callFrame } of profile.nodes) {
    const { url, lineNumber, columnNumber } = callFrame;
    const entry = url === '' ? undefined : mapOf(url)?.findEntry(lineNumber, columnNumber);
    const source = entry && 'originalSource' in entry ? entry.originalSource : undefined;
    const caller = parents.get(id);
    const inherited = caller === undefined ? undefined : rooms.get(caller);
    rooms.set(id, typeof source === 'string' ? roomOf(source) : inherited);
  }
  const times = new Map<string, number>();
  profile.samples?.forEach((id, i) => {
    const room = rooms.get(id);
    const spent = (profile.timeDeltas?.[i + 1] ?? 0) / 1000;
    if (room !== undefined) times.set(room, (times.get(room) ?? 0) + spent);
  });
  return times;
}

function readMap(url: string, folder: string): SourceMap | undefined {
  try {
    const file = join(folder, `${new URL(url).pathname}.map`);
    return new SourceMap(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return undefined;
  }
}

function roomOf(source: string): string {
  const ours = /(?:^|\/)src\/([a-z]+)\//.exec(source) ?? /^(?:\.\.\/)+([a-z]+)\//.exec(source);
  const package_ = /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(source);
  return package_?.[1] ?? ours?.[1] ?? source;
}
