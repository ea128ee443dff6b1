// Builds a shop from nothing, with whatever hands: a collector by typed points, eight drops over three
// wyes, two hoses, a pipe of one's own and a hood by its reading.
import type { Hands } from './hands.ts';

/** Flow [cfm] and suction [in. w.g.] of the collector, invented. */
const POINTS = [
  ['0', '11'],
  ['400', '10.6'],
  ['800', '8.8'],
  ['1100', '5.9'],
  ['1400', '1.5'],
] as const;

const SUCTION = 'Fan static pressure';

export async function buildShop(hands: Hands): Promise<void> {
  await startShop(hands);
  await hands.unfold('The run');
  await firstWye(hands);
  await secondWye(hands);
  await thirdWye(hands);
}

async function startShop(hands: Hands): Promise<void> {
  await hands.press('Start my own');
  await hands.pick('Points of my own');
  for (const [i, [flow, suction]] of POINTS.entries()) {
    await hands.type(`Flow of point ${i + 1}`, flow);
    await hands.type(`${SUCTION} of point ${i + 1}`, suction);
  }
  await hands.type('Length of the main', '22\' 6"');
  await hands.type('Length of its pipe', '9,5 ft');
  await hands.type('Name of the shop', 'Boat shed');
  await hands.press('Open the shop');
}

/** At the end of the main: the table saw goes straight on, planer and band saw join. */
async function firstWye(hands: Hands): Promise<void> {
  await hands.openRow('Main');
  await hands.press('Add smooth bend');
  await hands.type('How many', '2');

  await hands.openRow('Main');
  await hands.press('Add a branch at its upstream end');
  await hands.type('Name', 'Planer');
  await hands.choose('Machine of the table', 'Thickness planer to 15 in.');
  await hands.choose('Hood', 'Measured on the machine');
  await hands.type('Suction behind the hood', '2.4');
  await hands.type('Speed there at the same time', '3600');

  await hands.openRow('Main');
  await hands.press('Add a branch at its upstream end');
  await hands.type('Name', 'Band saw');
  await hands.type('Port, inside diameter', '100 mm');
  await hands.openRow('Band saw drop');
  await hands.type('Length', '3.8 m');
  await hands.choose('Kind of pipe', 'Your own, by its inside diameter');
  await hands.type('Inside diameter', '4 3/8');
  await hands.type('Roughness of the wall', '0.1 mm');
  await hands.type('Angle, 0 for straight on', '30');
}

/** Halfway along the table saw's pipe: jointer and router table join. */
async function secondWye(hands: Hands): Promise<void> {
  await hands.openRow('Table saw drop');
  await hands.press('Branch off halfway');
  await hands.type('Name', 'Jointer');
  await hands.openRow('Table saw drop');
  await hands.press('Add a branch at its upstream end');
  await hands.type('Name', 'Router table');
  await hands.type('Air it needs', '300');
}

/** Halfway along the planer's pipe: lathe, sander and floor sweep join, two of them by a hose. */
async function thirdWye(hands: Hands): Promise<void> {
  await hands.openRow('Planer drop');
  await hands.press('Branch off halfway');
  await hands.type('Name', 'Lathe');
  await hands.openRow('Lathe');
  await hands.press('Duplicate with its pipe');
  await hands.openRow('Lathe 2');
  await hands.type('Name', 'Sander');
  await hands.openRow('Planer drop');
  await hands.press('Add a branch at its upstream end');
  await hands.type('Name', 'Floor sweep');
  await hands.choose('Hood', 'Floor sweep');
  await hands.type('Leak when shut', '2');

  await hands.openRow('Lathe');
  await hands.press('Put in a hose');
  await hands.type('Length', '7 ft');
  await hands.type('Pushed together by', '8');
  await hands.openRow('Sander');
  await hands.press('Put in a hose');
  await hands.choose('Kind of pipe', 'Flexible hose, smooth bore');
}
