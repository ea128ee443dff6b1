// Makes the page believe that its processor has trouble following the gates, or none.
import { effort } from '../../src/ui/effort.ts';

/** Changes that take so long each [ms]: over 1 is trouble. */
export function makeChangesTake(time: number): void {
  for (let i = 0; i < 100; i++) {
    effort.measure(() => {
      const end = performance.now() + time;
      while (performance.now() < end);
    });
  }
}
