import { describe, expect, it } from 'vitest';
import { speedRows } from '../../../src/plot/speed-rows.ts';

const shut = { own: undefined, slowest: undefined, formerOwn: undefined, formerSlowest: undefined };
const range = { low: 10, high: 20 };
// The scale ends at 1.4 times the top of the range: 28 m/s on 280 px.
const frame = { left: 100, right: 380, top: 40, pitch: 30 };
const rows = speedRows(
  [{ own: 15, slowest: 5, formerOwn: 40, formerSlowest: undefined }, shut],
  range,
  frame,
  'metric',
);

describe('the speeds under one another', () => {
  it('stand on one scale with the carrying range', () => {
    expect(rows.band).toEqual({ left: 200, right: 300 });
    expect(rows.rows[0]?.own).toEqual({ x: 250, isPastEnd: false });
    expect(rows.rows[0]?.slowest).toEqual({ x: 150, isPastEnd: false });
  });

  it('are pinned at the end where they are past it', () => {
    expect(rows.rows[0]?.formerOwn).toEqual({ x: 380, isPastEnd: true });
  });

  it('are none where a drop is shut, which still has its row', () => {
    expect(rows.rows[1]).toMatchObject({ top: 70, bottom: 100, own: undefined });
    expect(rows.inner.bottom).toBe(100);
  });

  it('have round ticks on the scale', () => {
    expect(rows.axis.ticks.map(({ label }) => label)).toEqual(['0', '10', '20']);
  });
});
