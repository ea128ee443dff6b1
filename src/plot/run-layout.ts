// Lays the run of ducts out by itself: the collector on the left, the drops under one another on the
// right, the straight run of every wye kept on one line, branches above and below it by turns.
// A branch that leaves nearer to the collector lies further out, so no two ducts ever cross.

/** A section as the layout needs it. */
export interface RunSection {
  /** Place in the list of the section that it empties into; -1 at the collector. */
  readonly into: number;
  /** Whether it goes straight on through the wye that it empties into. */
  readonly straight: boolean;
}

/** Where a section lies, in columns from the collector and rows from the top. */
export interface SectionPlace {
  /** Its row [-]; not whole where a wye has no straight run. */
  readonly row: number;
  /** Row of what it empties into [-]. */
  readonly intoRow: number;
  /** Column of its end towards the collector [-]. */
  readonly start: number;
  /** Column of its end towards the drops [-]. */
  readonly end: number;
}

/** Places of all sections, and how large the whole is. */
export interface RunLayout {
  readonly sections: readonly SectionPlace[];
  readonly rows: number;
  readonly columns: number;
}

/**
 * Lays out a tree of sections. Open ends get whole rows, each its own; all end at the last column.
 *
 * @param sections - a tree: exactly one section has `into` -1, and there are no cycles
 * @returns the layout, sections in the order given
 * @throws RangeError if no section is at the collector
 */
export function runLayout(sections: readonly RunSection[]): RunLayout {
  const root = sections.findIndex((section) => section.into < 0);
  if (root < 0) throw new RangeError('no section empties into the collector');
  const inlets = sections.map((): number[] => []);
  sections.forEach(({ into }, i) => {
    inlets[into]?.push(i);
  });

  const rowOf = new Float64Array(sections.length);
  let rows = 0;
  let above = 0;
  const layRows = (section: number): void => {
    const [before, straight, after] = sidesOf(section);
    for (const inlet of before) layRows(inlet);
    if (straight !== undefined) layRows(straight);
    for (const inlet of after) layRows(inlet);
    if (inlets[section]!.length === 0) rowOf[section] = rows++;
    else if (straight !== undefined) rowOf[section] = rowOf[straight]!;
    else rowOf[section] = mean(inlets[section]!.map((inlet) => rowOf[inlet]!));
  };
  /** Sides of the run, so that over the whole tree both hold as many branches. */
  const sidesOf = (section: number): [number[], number | undefined, number[]] => {
    const all = inlets[section]!;
    const straight = all.length === 1 ? all[0] : all.find((inlet) => sections[inlet]!.straight);
    const sides: [number[], number[]] = [[], []];
    for (const inlet of all) {
      if (inlet === straight) continue;
      const side = above > 0 ? 1 : 0;
      above += side === 0 ? 1 : -1;
      sides[side].push(inlet);
    }
    return [sides[0], straight, sides[1].toReversed()];
  };
  layRows(root);

  const columns = Math.max(...sections.map((_, i) => wyesBelow(sections, inlets, i))) + 1;
  return {
    sections: sections.map(({ into }, i) => ({
      row: rowOf[i]!,
      intoRow: into < 0 ? rowOf[i]! : rowOf[into]!,
      ...span(sections, inlets, i, columns),
    })),
    rows,
    columns,
  };
}

/** How many wyes lie between a section and the collector. */
function wyesBelow(
  sections: readonly RunSection[],
  inlets: readonly (readonly number[])[],
  section: number,
): number {
  let wyes = 0;
  for (let at = sections[section]!.into; at >= 0; at = sections[at]!.into) {
    if (inlets[at]!.length > 1) wyes++;
  }
  return wyes;
}

/** A run of sections without a wye shares the columns from its wye to the next or to the end. */
function span(
  sections: readonly RunSection[],
  inlets: readonly (readonly number[])[],
  section: number,
  columns: number,
): { start: number; end: number } {
  let before = 0;
  for (let at = section; ; before++) {
    const into = sections[at]!.into;
    if (into < 0 || inlets[into]!.length > 1) break;
    at = into;
  }
  let after = 0;
  let last = section;
  while (inlets[last]!.length === 1) {
    last = inlets[last]![0]!;
    after++;
  }
  const from = wyesBelow(sections, inlets, section);
  const to = inlets[last]!.length === 0 ? columns : from + 1;
  const share = (to - from) / (before + 1 + after);
  return { start: from + before * share, end: from + (before + 1) * share };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
