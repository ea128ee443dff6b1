// The rooms of src/, lowest first, and the packages that each may use.
// A room imports itself and rooms above it in this list; `cli` stands beside `app`.

export interface Room {
  readonly name: string;
  readonly packages: readonly string[] | 'any';
}

export const rooms: readonly Room[] = [
  { name: 'units', packages: [] },
  { name: 'math', packages: ['simple-statistics'] },
  { name: 'air', packages: ['psychrolib'] },
  { name: 'curve', packages: [] },
  { name: 'duct', packages: [] },
  { name: 'solve', packages: [] },
  { name: 'study', packages: [] },
  { name: 'shop', packages: ['zod', 'idb'] },
  { name: 'state', packages: ['@preact/signals-core'] },
  { name: 'plot', packages: ['d3-scale'] },
  { name: 'ui', packages: ['lit', '@lit/context', 'pdfjs-dist'] },
  { name: 'app', packages: 'any' },
];

/** Reads files and prints; takes nothing that draws. */
export const cli: Room = { name: 'cli', packages: ['node:*'] };
const cliReaches = 'shop';

/** The rooms whose every function is documented and that know nothing of page, clock or chance. */
export const coreRooms = rooms.slice(
  0,
  rooms.findIndex((room) => room.name === 'shop'),
);

export const findRoom = (name: string): Room | undefined =>
  [...rooms, cli].find((room) => room.name === name);

/** Whether a file in one room may import a file in another. */
export function mayImport(from: string, to: string): boolean {
  if (from === to) return true;
  const rank = (name: string) => rooms.findIndex((room) => room.name === name);
  if (to === cli.name) return false;
  if (from === cli.name) return rank(to) >= 0 && rank(to) <= rank(cliReaches);
  return rank(to) >= 0 && rank(to) < rank(from);
}

export const mayUse = (room: Room, name: string): boolean =>
  room.packages === 'any' ||
  room.packages.includes(name) ||
  (room.packages.includes('node:*') && name.startsWith('node:'));
