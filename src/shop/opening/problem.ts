// What is wrong with a file, for a person to put right: where, and in one sentence what.

/** One thing that is wrong with a document. */
export interface Problem {
  /** Where, as a path in the document: 'sections[3].length (section "main-2")'. */
  readonly place: string;
  /** What is there, why not, and what would do. Begins in lower case, to follow the place. */
  readonly message: string;
}

const MOST = 100;

/**
 * The first hundred problems. If there are more, the last entry says how many.
 *
 * @param problems - any number of problems
 * @returns at most a hundred, and one that counts the rest
 */
export function firstProblems(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length <= MOST) return problems;
  const rest = problems.length - MOST;
  return [
    ...problems.slice(0, MOST),
    { place: 'the file', message: `has ${rest} more problems of which these may be the cause` },
  ];
}
