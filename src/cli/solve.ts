// `npm run --silent solve -- FILE [--open "id,id"] [--json] [--metric]`: the operating point of a
// shop on the terminal, with the same core as the page.

import { runSolve } from './run-solve.ts';

const { status, out, errors } = runSolve(process.argv.slice(2));
process.stdout.write(out);
process.stderr.write(errors);
process.exitCode = status;
