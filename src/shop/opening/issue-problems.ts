// What the schema complains of, as plain sentences: the place, what stands there, what would do.

import type { z } from '../schema/zod.ts';
import { knownKeys } from './known-keys.ts';
import { nearestWords } from './nearest.ts';
import { placeOf, showValue, valueAtPath } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * The problems that a schema finds in a document.
 *
 * @param schema - the schema of the whole document
 * @param document - the document that the schema refused
 * @param issues - what the schema said of it
 * @returns a problem for each, and one for each unknown key
 */
export function issueProblems(
  schema: z.core.$ZodType,
  document: unknown,
  issues: readonly z.core.$ZodIssue[],
): Problem[] {
  return issues.flatMap((issue) => {
    if (issue.code === 'unrecognized_keys') return unknownKeys(schema, document, issue);
    const value = valueAtPath(document, issue.path);
    const found = value === undefined ? 'is missing' : `is ${showValue(value)}`;
    return { place: placeOf(issue.path, document), message: `${found}; it ${whatIsRight(issue)}` };
  });
}

function unknownKeys(
  schema: z.core.$ZodType,
  document: unknown,
  issue: z.core.$ZodIssueUnrecognizedKeys,
): Problem[] {
  const known = knownKeys(schema, document, issue.path);
  return issue.keys.map((key) => {
    const [near] = nearestWords(key, known, 1);
    const hint =
      near === undefined
        ? `the keys known here are ${known.join(', ')}`
        : `did you mean "${near}"?`;
    return {
      place: placeOf([...issue.path, key], document),
      message: `is not a key known here; ${hint}`,
    };
  });
}

function whatIsRight(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_union' && 'options' in issue && Array.isArray(issue.options)) {
    const options = issue.options.map((option) => JSON.stringify(option));
    return `must be ${options.join(' or ')}`;
  }
  if (issue.message.startsWith('must be')) return issue.message;
  if (issue.code === 'invalid_type' && issue.expected === 'object')
    return 'must be an object in {}';
  if (issue.code === 'invalid_value') {
    return `must be ${issue.values.map((value) => JSON.stringify(value)).join(' or ')}`;
  }
  return 'must be of another kind';
}
