// What breaks the order of the house, one readable line a fault.
import { type Import, readImports } from './read-imports.ts';
import { coreRooms, findRoom, mayImport, mayUse } from './rooms.ts';
import type { SourceFile } from './source-files.ts';

/** Rooms, packages and data folders that a file reaches and may not. */
export function importFaults(file: SourceFile): string[] {
  const room = findRoom(file.room);
  if (room === undefined) return file.path.endsWith('.d.ts') ? [] : [`${file.path} is in no room`];
  const refused = (item: Import) =>
    item.kind === 'package' ? !mayUse(room, item.name) : !mayReach(file.room, item.path);
  return readImports(file)
    .filter(refused)
    .map((item) => `${file.path} may not import ${item.kind === 'file' ? item.path : item.name}`);
}

function mayReach(room: string, path: string): boolean {
  const [top, to = ''] = path.split('/');
  if (top === 'src') return mayImport(room, to);
  return (top === 'shared' || top === 'curves') && path.endsWith('.json');
}

/** Barrels, default exports and names that say nothing. */
export function exportFaults(file: SourceFile): string[] {
  if (file.path.endsWith('.d.ts')) return []; // speaks for a package
  const faults: [RegExp, string][] = [
    [/\bexport\s+default\b|\bas\s+default\b/, 'has a default export'],
    [/\bexport\s+(?:type\s+)?(?:\*|\{[^}]*\})[^;]*?\bfrom\b/, 'exports what another file holds'],
    [/\bexport\s+(?:let|var)\b/, 'exports a variable that can change'],
    [/\b(?:enum|namespace)\s+\w+\s*\{/, 'holds an enum or a namespace'],
  ];
  const found = faults.filter(([pattern]) => pattern.test(file.bare)).map(([, fault]) => fault);
  if (/\/(?:index|utils|types|helpers)\.ts$/.test(file.path))
    found.push('has a name that says nothing');
  return found.map((fault) => `${file.path} ${fault}`);
}

/** The core knows no page, no clock, no chance and no terminal. */
export function purityFaults(file: SourceFile): string[] {
  if (!coreRooms.some((room) => room.name === file.room)) return [];
  const world =
    /\b(?:console|window|localStorage|navigator|process)\.|\bdocument\.(?:body|create|query|get)\w*|\bnew Date\b|\bDate\.now\b|\bMath\.random\b|\bperformance\.now\b|\bset(?:Timeout|Interval)\b/;
  const match = world.exec(file.bare);
  return match === null ? [] : [`${file.path} reaches outside the core: ${match[0]}`];
}

/** Every ring of imports, written as the path that comes back to its start. */
export function cycles(files: readonly SourceFile[]): string[] {
  const next = new Map(
    files.map((file) => [
      file.path,
      readImports(file).flatMap((item) => (item.kind === 'file' ? [item.path] : [])),
    ]),
  );
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]) => {
    const start = trail.indexOf(path);
    if (start >= 0) found.push([...trail.slice(start), path].join(' → '));
    if (start >= 0 || done.has(path)) return;
    for (const target of next.get(path) ?? []) visit(target, [...trail, path]);
    done.add(path);
  };
  for (const file of files) visit(file.path, []);
  return found;
}
