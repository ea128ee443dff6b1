import { describe, expect, it } from 'vitest';
import { MOST_ZOOM, WHOLE_RUN, zoomedAbout } from '../../../src/plot/run-zoom.ts';

describe('zooming the drawing of a run', () => {
  it('keeps what lies under the finger there', () => {
    const about = { x: 120, y: 40 };
    const near = zoomedAbout({ zoom: 2, left: 300, top: 90 }, 3, about);
    expect((near.left + about.x) / 3).toBeCloseTo((300 + about.x) / 2);
    expect((near.top + about.y) / 3).toBeCloseTo((90 + about.y) / 2);
  });

  it('goes no closer and no further than it can be read', () => {
    expect(zoomedAbout(WHOLE_RUN, 99, { x: 0, y: 0 }).zoom).toBe(MOST_ZOOM);
    expect(zoomedAbout({ zoom: 1.2, left: 30, top: 0 }, 0.1, { x: 200, y: 10 })).toEqual(WHOLE_RUN);
  });
});
