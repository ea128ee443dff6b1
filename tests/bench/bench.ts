// `npm run --silent bench`: how quick a balance is, one line a figure, `bench NAME VALUE`.
// What each figure means is in the header of the file that measures it.

import { decisionsVsEngine } from './decisions-bench.ts';
import { growthExponent } from './growth-bench.ts';
import { solveBench } from './solve-bench.ts';
import { studyVsEngine } from './study-bench.ts';
import { loadWaterEngine } from '../setup/water-engine.ts';

function print(name: string, value: number): void {
  process.stdout.write(`bench ${name} ${value.toFixed(2)}\n`);
}

async function main(): Promise<void> {
  const engine = await loadWaterEngine();
  for (const leaves of [12, 100]) {
    const ratios = solveBench(engine, leaves, 'fixed');
    print(`solve-${leaves}-vs-engine`, ratios.engine);
    print(`solve-${leaves}-vs-api`, ratios.api);
  }
  for (const leaves of [12, 100]) {
    print(`wyes-${leaves}-vs-engine`, solveBench(engine, leaves, 'momentum').engine);
  }
  print('growth-exponent', growthExponent());
  print('study-vs-engine', studyVsEngine(engine));
  const decisions = decisionsVsEngine(engine);
  print('decisions-vs-engine', decisions.ratio);
  print('decisions-per-second', decisions.perSecond);
}

void main();
