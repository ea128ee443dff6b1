// The arrow keys reach every duct and every drop, and always come back to the collector.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runLayout, type RunSection } from '../../../src/plot/run-layout.ts';
import { type RunStop, runStep, type RunWay } from '../../../src/plot/run-steps.ts';

const tree = fc
  .array(fc.tuple(fc.nat(), fc.boolean()), { maxLength: 30 })
  .map((raw): RunSection[] => [
    { into: -1, straight: false },
    ...raw.map(([into, straight], i) => ({ into: into % (i + 1), straight })),
  ]);
const WAYS: readonly RunWay[] = ['left', 'right', 'up', 'down'];

describe('stepping through the drawing of a run', () => {
  it('reaches every section and every open end', () => {
    fc.assert(
      fc.property(tree, (sections) => {
        const layout = runLayout(sections);
        const seen = new Map<string, RunStop>();
        const queue: RunStop[] = [
          runStep(sections, layout, { kind: 'section', section: 0 }, 'first'),
        ];
        for (let stop = queue.pop(); stop; stop = queue.pop()) {
          const key = `${stop.kind} ${stop.section}`;
          if (seen.has(key)) continue;
          seen.set(key, stop);
          for (const way of WAYS) queue.push(runStep(sections, layout, stop, way));
        }
        const fed = new Set(sections.map(({ into }) => into));
        sections.forEach((_, i) => {
          if (!fed.has(i)) expect(seen.has(`drop ${i}`)).toBe(true);
          expect(seen.has(`section ${i}`)).toBe(true);
        });
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('goes with the air to the left and against it to the right', () => {
    const sections = [
      { into: -1, straight: false },
      { into: 0, straight: false },
      { into: 0, straight: true },
    ];
    const layout = runLayout(sections);
    const step = (at: RunStop, way: RunWay) => runStep(sections, layout, at, way);
    expect(step({ kind: 'section', section: 0 }, 'right')).toEqual({ kind: 'section', section: 2 });
    expect(step({ kind: 'section', section: 2 }, 'right')).toEqual({ kind: 'drop', section: 2 });
    expect(step({ kind: 'drop', section: 2 }, 'right')).toEqual({ kind: 'drop', section: 2 });
    expect(step({ kind: 'drop', section: 2 }, 'left')).toEqual({ kind: 'section', section: 2 });
    expect(step({ kind: 'section', section: 0 }, 'left')).toEqual({ kind: 'section', section: 0 });
    expect(step({ kind: 'drop', section: 2 }, 'up')).toEqual({ kind: 'drop', section: 1 });
    expect(step({ kind: 'section', section: 0 }, 'last')).toEqual({ kind: 'drop', section: 2 });
  });
});
