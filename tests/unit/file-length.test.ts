// A source file holds one idea in some forty to a hundred lines; one of more than 200 says why.
import { describe, expect, it } from 'vitest';
import { sourceFile, type SourceFile, sourceFiles } from '../setup/source-files.ts';

const MOST_LINES = 200;

/** The comment at the top of a file. */
const headOf = ({ text }: SourceFile): string => /^(?:\/\/.*\n)*/.exec(text)?.[0] ?? '';

function isTooLong(file: SourceFile): boolean {
  return file.text.split('\n').length - 1 > MOST_LINES && !headOf(file).includes(`${MOST_LINES}`);
}

describe('source files', () => {
  it('of more than 200 lines give the reason at their top', () => {
    expect(
      sourceFiles()
        .filter(isTooLong)
        .map(({ path }) => path),
    ).toEqual([]);
  });

  it('would be found where they give none', () => {
    const long = 'const a = 1;\n'.repeat(MOST_LINES + 1);
    expect(isTooLong(sourceFile('src/math/a.ts', long))).toBe(true);
    expect(isTooLong(sourceFile('src/math/a.ts', `// Over 200 lines: a table.\n${long}`))).toBe(
      false,
    );
  });
});
