// `npm run bench:page`: what the built page does in a frame while a gate is dragged in
// Chromium, and while a point of the collector's curve is.
//
// A frame's work is what the main thread spends on script (events, animation frames, microtasks,
// garbage collection), style and layout, from Chromium's trace; painting is printed beside it. It is
// processor time of that thread. The mouse moves once a frame; the gate is dragged several times and
// the frames of all drags count. Shares are of script, style, layout and painting together: solving is
// the rooms from math to shop, geometry is plot and d3, rendering is all the rest, the browser's part
// included. Slowed frames are of a processor that takes four times as long for the same arithmetic, which
// is at a lower rate than Chromium's four. Which room script belongs to is sampled every 100 µs and read
// off the source maps.
//
// Time that other machines steal from the processor while a drag is slowed counts several times over, so
// a slowed drag is made anew, a few times, where much was stolen; the share is printed.

import type { Browser } from 'playwright-core';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { longShop } from '../setup/long-shop.ts';
import { servePage } from '../setup/serve-page.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { dragGate, showShop } from './drag-gate.ts';
import { decisionFrames } from './decisions-frames.ts';
import { dragPoint, showCurve } from './drag-point.ts';
import { timeByRoom } from './profile-rooms.ts';
import type { DragRecord } from './record-drag.ts';
import type { FrameWork } from './trace-frames.ts';
import { stolenSince } from './stolen-time.ts';
import { slowness, yardstick } from './yardstick.ts';

const SOLVING = ['math', 'air', 'curve', 'duct', 'solve', 'study', 'shop'];
const GEOMETRY = ['plot', 'd3-scale', 'd3-array', 'd3-interpolate', 'd3-format'];
/** With less script a frame had no move of the gate in it [ms]. */
const LEAST_SCRIPT = 0.3;
/** To and fro a whole number of times, so that each drag ends where it began. */
const MOVES = 360;
/** Other work on the machine adds to single frames; of more drags they are a smaller part. */
const DRAGS = 3;
/** So much may be stolen from a slowed drag [-], or it is made again, so many times in all. */
const LITTLE_STOLEN = 0.01;
const MOST_DRAGS = 9;
/** How many times slower the slowed drags' processor is, by the yardstick. */
const SLOWER = 4;
const OPEN_OF_LONG = 10;

const demo = demoShop();
const dragged = (shop: Shop): string => shop.drops[0]?.name ?? '';
const work = ({ script, layout }: FrameWork): number => script + layout;

/** Frames without a move of the gate don't count. */
const isBusy = ({ script }: FrameWork): boolean => script > LEAST_SCRIPT;

function print(name: string, value: number): void {
  console.log(`bench ${name} ${value.toFixed(3)}`);
}

/** Drags several times. */
async function drags(drag: () => Promise<DragRecord>): Promise<DragRecord[]> {
  const records: DragRecord[] = [];
  while (records.length < DRAGS) records.push(await drag());
  return records;
}

/** Drags on until enough of the drags were hardly disturbed; those from which least was stolen count. */
async function quietDrags(name: string, drag: () => Promise<DragRecord>): Promise<DragRecord[]> {
  const made: { readonly record: DragRecord; readonly stolen: number }[] = [];
  const isQuiet = ({ stolen }: { readonly stolen: number }) => stolen <= LITTLE_STOLEN;
  while (made.filter(isQuiet).length < DRAGS && made.length < MOST_DRAGS) {
    const stolen = stolenSince();
    const record = await drag();
    made.push({ record, stolen: stolen() });
  }
  const quietest = made.toSorted((a, b) => a.stolen - b.stolen).slice(0, DRAGS);
  print(`${name}-stolen-share`, Math.max(...quietest.map(({ stolen }) => stolen)));
  return quietest.map(({ record }) => record);
}

/** The value that a part of the frames of all the drags stay at or under. */
function quantile(records: readonly DragRecord[], part: number, value = work): number {
  return quantileOf(
    records.flatMap(({ frames }) => frames.filter(isBusy).map(value)),
    part,
  );
}

function quantileOf(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.ceil(part * sorted.length) - 1] ?? Number.NaN;
}

function printShares({ frames, profile }: DragRecord, folder: string): void {
  if (!profile) throw new Error('shares need a profile');
  const rooms = timeByRoom(profile, folder);
  const sum = (values: Iterable<number>) => [...values].reduce((total, each) => total + each, 0);
  const script = sum(rooms.values());
  const part = (names: readonly string[]) =>
    sum(names.map((name) => rooms.get(name) ?? 0)) / script;
  const scripted = sum(frames.map((frame) => frame.script));
  const browser = sum(frames.map(({ layout, paint }) => layout + paint));
  const share = (of: number) => (of * scripted) / (scripted + browser);
  const [solve, geometry] = [share(part(SOLVING)), share(part(GEOMETRY))];
  print('drag-12-solve-share', solve);
  print('drag-12-geometry-share', geometry);
  print('drag-12-render-share', 1 - solve - geometry);
  if (process.argv.includes('--rooms')) {
    const per = (total: number) => (total / frames.length).toFixed(2);
    console.log(`of each frame ${per(scripted)} ms script, ${per(browser)} ms browser`);
    for (const [room, time] of [...rooms].toSorted((a, b) => b[1] - a[1])) {
      console.log(`${room}: ${time.toFixed(0)} ms of ${script.toFixed(0)}`);
    }
  }
}

async function run(browser: Browser, address: string, folder: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address, { waitUntil: 'load' });
  await page.getByRole('slider').first().waitFor();
  await showShop(page, demo, demo.gateSets[0]?.open ?? []);
  print('yardstick-ms', await yardstick(page));
  const gateOf = (shop: Shop, slowdown: number) => () =>
    dragGate(page, dragged(shop), { moves: MOVES, slowdown, watch: 'time' });
  const plain = await drags(gateOf(demo, 1));
  print('drag-12-p50-ms', quantile(plain, 0.5));
  print('drag-12-p95-ms', quantile(plain, 0.95));
  print(
    'drag-12-paint-p95-ms',
    quantile(plain, 0.95, ({ paint }) => paint),
  );
  const { rate, times } = await slowness(page, SLOWER);
  print('yardstick-slowed-times', times);
  const slow = await quietDrags('drag-12-slow', gateOf(demo, rate));
  print('drag-12-slow-p50-ms', quantile(slow, 0.5));
  print('drag-12-slowed-times', quantile(slow, 0.5) / quantile(plain, 0.5));
  print('drag-12-slow-p99-ms', quantile(slow, 0.99));
  printShares(
    await dragGate(page, dragged(demo), { moves: MOVES, slowdown: 1, watch: 'profile' }),
    folder,
  );

  const long = longShop(60);
  await showShop(
    page,
    long,
    long.drops.slice(0, OPEN_OF_LONG).map(({ id }) => id),
  );
  print('drag-60-p95-ms', quantile(await drags(gateOf(long, 1)), 0.95));

  await showShop(page, demo, demo.gateSets[0]?.open ?? []);
  await showCurve(page);
  const pointAt = (slowdown: number) => () =>
    dragPoint(page, { moves: MOVES, slowdown, watch: 'time' });
  print('drag-point-p95-ms', quantile(await drags(pointAt(1)), 0.95));
  const slowPoint = await quietDrags('drag-point-slow', pointAt(rate));
  print('drag-point-slow-p50-ms', quantile(slowPoint, 0.5));
  print('drag-point-slow-p99-ms', quantile(slowPoint, 0.99));
  const asked = (await decisionFrames(page)).map(work);
  print('decisions-frame-p99-ms', quantileOf(asked, 0.99));
  print('decisions-frame-longest-ms', Math.max(...asked));
  await page.close();
}

const served = await servePage();
const browser = await launchChromium();
try {
  await run(browser, served.address, served.folder);
} finally {
  await browser.close();
  await served.close();
}
