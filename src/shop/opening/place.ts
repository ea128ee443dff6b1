// Where in a document something stands, written so that a person finds it: the path, and the id of
// the section, drop or gate set that it leads into.

/** The way to a value: keys and list positions, from the outside in. */
export type Path = readonly PropertyKey[];

const KINDS: Readonly<Record<string, string>> = {
  sections: 'section',
  drops: 'drop',
  gateSets: 'gate set',
};

/**
 * The place as text: `sections[3].length (section "main-2")`; 'the file' for the whole document.
 *
 * @param path - keys and list positions from the outside in
 * @param document - the document, read or half read
 * @returns the place for a message
 */
export function placeOf(path: Path, document: unknown): string {
  if (path.length === 0) return 'the file';
  const steps = path.map((step, i) => pathStep(step, i === 0)).join('');
  const owner = ownerOf(path, document);
  return owner === undefined ? steps : `${steps} (${owner})`;
}

/**
 * The value that a path leads to.
 *
 * @param document - the document, read or half read
 * @param path - keys and list positions from the outside in
 * @returns the value, or undefined where the path leads nowhere
 */
export function valueAtPath(document: unknown, path: Path): unknown {
  let value = document;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) {
      return undefined;
    }
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

/**
 * A value as a message shows it: short, on one line, without control characters.
 *
 * @param value - any value that JSON can hold
 * @returns the value in at most about fifty characters
 */
export function showValue(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'number' && !Number.isFinite(value)) return 'a number too large to hold';
  const text = JSON.stringify(value).replace(/\p{C}/gu, '�');
  return text.length <= 48 ? text : `${text.slice(0, 45)}…"`;
}

function pathStep(step: PropertyKey, first: boolean): string {
  if (typeof step === 'number') return `[${step}]`;
  const key = String(step);
  if (!/^[\p{L}_$][\p{L}\p{N}_$-]{0,60}$/u.test(key)) return `[${showValue(key)}]`;
  return first ? key : `.${key}`;
}

function ownerOf(path: Path, document: unknown): string | undefined {
  const [list, position] = path;
  const kind = KINDS[String(list)];
  if (kind === undefined || typeof position !== 'number') return undefined;
  const id = valueAtPath(document, [String(list), position, 'id']);
  return typeof id === 'string' ? `${kind} ${showValue(id)}` : undefined;
}
