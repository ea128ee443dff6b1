// Curves as files: one as the same JSON as in curves/, many as a JSON list of these, and either as CSV.
// A curve that can't be opened keeps none of the others from being opened.

import { freshId } from '../edits/fresh-id.ts';
import { openCurveDocument } from '../open-curve.ts';
import type { Problem } from '../opening/problem.ts';
import { readJson } from '../opening/read-document.ts';
import type { Curve } from '../schema/curve-schema.ts';
import type { TextFile } from '../shop-file.ts';
import { readCurvesCsv } from './read-curves-csv.ts';

/** What came of opening a file. */
export interface OpenedCurves {
  readonly curves: readonly Curve[];
  /** What is wrong with the file, or with those of its curves that were left out. */
  readonly problems: readonly Problem[];
}

/**
 * The JSON file of curves: a single one as it stands, several as a list.
 *
 * @param curves - one or more
 * @returns name and text of the file
 */
export function curvesFile(curves: readonly Curve[]): TextFile {
  const [only, ...others] = curves;
  const isOne = only !== undefined && others.length === 0;
  return {
    name: `${isOne ? freshId(only.name, []) : 'curves'}.json`,
    text: `${JSON.stringify(isOne ? only : curves, undefined, 2)}\n`,
  };
}

/**
 * Opens the curves of a file.
 *
 * @param file - its name, which tells CSV by its ending, and its text
 * @returns the curves, and what is wrong and where
 */
export function openCurves({ name, text }: TextFile): OpenedCurves {
  if (/\.csv$/i.test(name)) return opened(readCurvesCsv(text));
  const json = readJson(text);
  if (json.kind === 'refused') return { curves: [], problems: json.problems };
  if (!Array.isArray(json.value)) {
    const one = openCurveDocument(json.value);
    return one.kind === 'opened'
      ? { curves: [one.curve], problems: [] }
      : { curves: [], problems: one.problems };
  }
  if (json.value.length === 0) {
    return {
      curves: [],
      problems: [
        { place: 'the file', message: 'holds an empty list; it must hold a curve or more' },
      ],
    };
  }
  return opened({
    documents: json.value.map((document: unknown, i) => ({ place: `[${i}]`, document })),
    problems: [],
  });
}

function opened({ documents, problems }: ReturnType<typeof readCurvesCsv>): OpenedCurves {
  const all = documents.map(({ place, document }) => ({
    place,
    result: openCurveDocument(document),
  }));
  return {
    curves: all.flatMap(({ result }) => (result.kind === 'opened' ? [result.curve] : [])),
    problems: [
      ...problems,
      ...all.flatMap(({ place, result }) =>
        result.kind === 'opened'
          ? []
          : result.problems.map((each) => ({ ...each, place: `${place}: ${each.place}` })),
      ),
    ],
  };
}
