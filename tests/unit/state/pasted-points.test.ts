import { describe, expect, it } from 'vitest';
import { pastedPoints } from '../../../src/state/pasted-points.ts';

describe('pasted points', () => {
  it('are read line by line, headings passed over', () => {
    const text = 'Flow\tPressure\r\n0\t2400\r\n360\t2100\r\n720\t1,5 kPa\r\n';
    expect(pastedPoints(text, 'metric')).toEqual([
      { flow: 0, pressure: 2400 },
      { flow: 0.1, pressure: 2100 },
      { flow: 0.2, pressure: 1500 },
    ]);
  });

  it('take semicolons, units of their own, and a comma between thousands', () => {
    expect(pastedPoints('0 cfm;10 in. w.g.\n1,000;4', 'us')).toEqual([
      { flow: 0, pressure: 2490.8891 },
      { flow: 0.4719474432, pressure: 996.35564 },
    ]);
  });

  it('are none where one amount is pasted, or words', () => {
    for (const text of ['1200', '12\t3', 'a\tb\nc\td', '']) {
      expect(pastedPoints(text, 'us')).toBeUndefined();
    }
  });
});
