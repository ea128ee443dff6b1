// Opens a curve document: text or JSON in, a curve or readable problems out. Never throws on a file.

import { checkCurve } from './opening/check-curve.ts';
import { issueProblems } from './opening/issue-problems.ts';
import { CURVE_HISTORY } from './opening/migrations.ts';
import { firstProblems, type Problem } from './opening/problem.ts';
import { readDocument, readJson } from './opening/read-document.ts';
import { type Curve, curveSchema } from './schema/curve-schema.ts';

/** How opening a curve ended. */
export type OpenedCurve =
  | { readonly kind: 'opened'; readonly curve: Curve }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Opens a curve from the text of a file.
 *
 * @param text - the text of the file
 * @returns the curve, or what is wrong with the file and where
 */
export function openCurve(text: string): OpenedCurve {
  const json = readJson(text);
  return json.kind === 'refused' ? json : openCurveDocument(json.value);
}

/**
 * Opens a curve from a JSON value, as it comes from a store or an import.
 *
 * @param value - any JSON value
 * @returns the curve, or what is wrong with it and where
 */
export function openCurveDocument(value: unknown): OpenedCurve {
  const read = readDocument(value, CURVE_HISTORY);
  if (read.kind === 'refused') return read;
  const parsed = curveSchema.safeParse(read.document);
  const problems = parsed.success
    ? checkCurve(parsed.data, [])
    : issueProblems(curveSchema, read.document, parsed.error.issues);
  if (!parsed.success || problems.length > 0) {
    return { kind: 'refused', problems: firstProblems(problems) };
  }
  return { kind: 'opened', curve: parsed.data };
}
