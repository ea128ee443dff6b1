// What the command line says of a shop: the document written to a file, read back and solved.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runSolve } from '../../../../src/cli/run-solve.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import type { StateReport } from '../../../../src/shop/state-report.ts';

/** The states that `solve` prints, or the one with these drops open. */
export function solvedByCommandLine(shop: Shop, open?: readonly string[]): StateReport[] {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-'));
  try {
    const file = join(folder, 'shop.json');
    writeFileSync(file, JSON.stringify(shop));
    const words = open === undefined ? [] : [`--open=${open.join(',')}`];
    const { status, out, errors } = runSolve([file, '--json', ...words]);
    if (status !== 0) throw new Error(errors);
    return (JSON.parse(out) as { readonly states: StateReport[] }).states;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
