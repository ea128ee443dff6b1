// Broken shop files: what is done to a good one, where the complaint must point, and a word that it
// must hold. Each is the small shop with one thing wrong.
import { smallShop } from './small-shop.ts';

export interface BrokenFile {
  readonly name: string;
  readonly text: string;
  readonly place: string;
  readonly says: string;
}

// oxlint-disable-next-line typescript/no-explicit-any -- a broken document has no type
type Loose = any;

const good = JSON.stringify(smallShop, undefined, 2);
const lines = good.split('\n').length;

function broken(name: string, place: string, says: string, damage: (shop: Loose) => void) {
  const shop: Loose = JSON.parse(good);
  damage(shop);
  return { name, text: JSON.stringify(shop), place, says };
}

function text(name: string, place: string, says: string, content: string): BrokenFile {
  return { name, text: content, place, says };
}

const curveDamage = (name: string, place: string, says: string, damage: (curve: Loose) => void) =>
  broken(name, `collector.curve.${place}`, says, (shop) => damage(shop.collector.curve));

const notReadable: readonly BrokenFile[] = [
  text('an empty file', 'line 1, column 1', 'ends too early', ''),
  text('not JSON', 'line 1, column 1', 'no number', 'Dear supplier, my shop has two machines.'),
  text('a truncated file', `line ${lines - 1}, column 4`, 'ends too early', good.slice(0, -2)),
  text(
    'half a file',
    'line 58, column 15',
    'never closed',
    good.slice(0, good.indexOf('Main') + 2),
  ),
  text('a comma too many', 'line 3, column 3', 'key', '{\n  "format": "dropcurve-shop",\n  }'),
  text('a missing comma', 'line 3, column 3', 'a comma', '{\n  "version": 1\n  "units": "SI"\n}'),
  text('single quotes', 'line 1, column 2', 'double quotes', "{'format': 'dropcurve-shop'}"),
  text('a comment', 'line 1, column 3', 'key', '{ // my shop\n}'),
  text(
    'NaN',
    'line 65, column 17',
    'NaN is no number',
    good.replace('"length": 6', '"length": NaN'),
  ),
  text('a decimal comma', 'line 1, column', 'key', '{"length": 2,5}'),
  text('a number with its unit', 'line 1, column 12', '5m', '{"length": 5m}'),
  text('text after the end', 'line 1, column 4', 'end of the file', '{} {}'),
  text(
    'a key twice',
    'line',
    '"units" stands twice',
    good.replace('"name"', '"units": "SI", "name"'),
  ),
  text('10,000 brackets', 'line 1, column 33', 'brackets', '['.repeat(10_000)),
  text('50 MB of nonsense', 'the file', 'characters long', 'nonsense '.repeat(5_600_000)),
  text('6 MB of good JSON', 'the file', 'characters long', `${good}${' '.repeat(6_000_000)}`),
];

const notAShop: readonly BrokenFile[] = [
  text('a list', 'the file', 'one object', '[]'),
  text('null', 'the file', 'one object', 'null'),
  text('a number', 'the file', 'one object', '42'),
  text('an empty object', 'format', 'missing', '{}'),
  text('another format', 'format', 'dropcurve-shop', '{"format": "birdhouse", "version": 1}'),
  text('a curve file', 'format', 'dropcurve-shop', JSON.stringify(smallShop.collector.curve)),
  broken('no version', 'version', 'missing', (shop) => delete shop.version),
  broken('a version in words', 'version', 'whole number', (shop) => (shop.version = 'one')),
  broken('version 0', 'version', 'whole number', (shop) => (shop.version = 0)),
  broken('a newer version', 'version', 'newer version', (shop) => {
    shop.version = 2;
    shop.sections = 'whatever came later';
  }),
  curveDamage('a newer curve', 'version', 'newer version', (curve) => (curve.version = 7)),
  broken('no units', 'units', 'SI', (shop) => delete shop.units),
  broken('other units', 'units', '"US"; it must be "SI"', (shop) => (shop.units = 'US')),
  curveDamage('no units in the curve', 'units', 'missing', (curve) => delete curve.units),
];

const wrongShape: readonly BrokenFile[] = [
  broken('no name', 'name', 'missing', (shop) => delete shop.name),
  broken('an empty name', 'name', '1 to 200', (shop) => (shop.name = '')),
  broken('a name of two lines', 'name', 'one line', (shop) => (shop.name = 'a\nb')),
  broken('an unknown key', 'colour', 'keys known here', (shop) => (shop.colour = 'blue')),
  broken('a mistyped key', 'sections[1].lenght (section "planer-run")', 'mean "length"', (shop) => {
    shop.sections[1].lenght = 3;
  }),
  broken('an unknown key in a hood', 'drops[0].hood.k (drop "planer")', 'coefficient', (shop) => {
    shop.drops[0].hood.k = 1;
  }),
  text(
    '__proto__ as a key',
    '__proto__',
    'not a key',
    good.replace('"name"', '"__proto__": {}, "name"'),
  ),
  broken('sections as an object', 'sections', 'list of 1', (shop) => (shop.sections = {})),
  broken('no sections', 'sections', 'list of 1', (shop) => (shop.sections = [])),
  broken('no drops', 'drops', 'list of 1', (shop) => (shop.drops = [])),
  broken('a section that is null', 'sections[2]', 'null', (shop) => (shop.sections[2] = null)),
  broken('a length in words', 'sections[3].length (section "saw-run")', '"2 m"', (shop) => {
    shop.sections[3].length = '2 m';
  }),
  broken('a negative length', 'sections[3].length (section "saw-run")', '-2', (shop) => {
    shop.sections[3].length = -2;
  }),
  text(
    'an infinite length',
    'sections[0].length (section "main")',
    'too large',
    good.replace('"length": 6', '"length": 1e999'),
  ),
  broken('a null length', 'sections[0].length (section "main")', 'null', (shop) => {
    shop.sections[0].length = Number.NaN; // what JSON makes of it is null
  }),
  broken('a diameter in mm', 'sections[0].pipe.diameter (section "main")', '150', (shop) => {
    shop.sections[0].pipe.diameter = 150;
  }),
  broken(
    'a pipe of no kind',
    'sections[0].pipe.kind (section "main")',
    '"catalogue" or',
    (shop) => {
      delete shop.sections[0].pipe.kind;
    },
  ),
  broken('no fittings', 'sections[0].fittings (section "main")', 'missing', (shop) => {
    delete shop.sections[0].fittings;
  }),
  broken('half a bend', 'sections[0].fittings[0].count (section "main")', 'whole', (shop) => {
    shop.sections[0].fittings[0].count = 0.5;
  }),
  broken(
    'a 7-piece elbow',
    'sections[0].fittings[0].pieces (section "main")',
    '3, 4 or 5',
    (shop) => {
      shop.sections[0].fittings[0] = { kind: 'gored', pieces: 7, radius: 1, angle: 90 };
    },
  ),
  broken('a negative hood', 'drops[1].hood.coefficient (drop "saw")', '-0.9', (shop) => {
    shop.drops[1].hood.coefficient = -0.9;
  }),
  broken('a gate pulled out too far', 'drops[0].gate.travel (drop "planer")', '0 to 1', (shop) => {
    shop.drops[0].gate.travel = 1.5;
  }),
  broken('a gate that never leaks', 'drops[0].gate.leak (drop "planer")', '0.00001', (shop) => {
    shop.drops[0].gate.leak = 0;
  }),
  broken('air without weight', 'air.density', 'kg/m³', (shop) => (shop.air.density = 0)),
  broken('humidity in percent', 'air.humidity', '0 to 1', (shop) => {
    shop.air = { kind: 'room', altitude: 0, temperature: 20, humidity: 45 };
  }),
  broken('an id with a comma', 'drops[0].id (drop "a,b")', 'hyphen', (shop) => {
    shop.drops[0].id = 'a,b';
  }),
  broken('a compression of 1', 'sections[2].compression (section "planer-end")', '0.6', (shop) => {
    shop.sections[2].compression = 1;
  }),
  curveDamage('a curve of one point', 'points', '2 to 5000', (curve) => (curve.points.length = 1)),
  curveDamage('no basis', 'basis', 'missing', (curve) => delete curve.basis),
  curveDamage('an unknown basis', 'basis.kind', '"fan-static" or', (curve) => {
    curve.basis.kind = 'static';
  }),
  curveDamage('a filter maybe included', 'includes.filter', 'true or false', (curve) => {
    curve.includes.filter = 'maybe';
  }),
  curveDamage('a point maybe set aside', 'points[1].aside', 'true', (curve) => {
    curve.points[1].aside = 'perhaps';
  }),
  curveDamage('an unknown fit', 'fit.kind', '"through" or "smooth"', (curve) => {
    curve.fit = { kind: 'freehand' };
  }),
  broken('half a collector more', 'collector.arrangement.count', 'whole', (shop) => {
    shop.collector.arrangement = { kind: 'parallel', count: 1.5 };
  }),
];

const wrongTogether: readonly BrokenFile[] = [
  curveDamage('unsorted flows', 'points[2].flow', 'after 0.2', (curve) => {
    [curve.points[1], curve.points[2]] = [curve.points[2], curve.points[1]];
  }),
  curveDamage('a repeated flow', 'points[2].flow', 'second time', (curve) => {
    curve.points[2].flow = 0.1;
  }),
  curveDamage('negative suction throughout', 'points', 'above 0', (curve) => {
    for (const point of curve.points) point.pressure = -point.pressure;
  }),
  curveDamage('all points but one set aside', 'points', 'at least two', (curve) => {
    for (const point of curve.points.slice(1)) point.aside = true;
  }),
  curveDamage('readings at one flow', 'points', 'two different', (curve) => {
    curve.fit = { kind: 'smooth' };
    for (const point of curve.points) point.flow = 0.2;
  }),
  curveDamage('unsorted power', 'power[1].flow', 'must rise', (curve) => {
    curve.power = [
      { flow: 0.2, power: 900 },
      { flow: 0.1, power: 700 },
    ];
  }),
  broken('a range upside down', 'carryingRange.high', 'above it', (shop) => {
    shop.carryingRange = { low: 22, high: 18 };
  }),
  broken('two sections of one id', 'sections[3].id (section "main")', 'sections[0]', (shop) => {
    shop.sections[3].id = 'main';
  }),
  broken('two drops of one id', 'drops[1].id (drop "planer")', 'drops[0]', (shop) => {
    shop.drops[1].id = 'planer';
  }),
  broken('two gate sets of one id', 'gateSets[1].id (gate set "both")', 'already', (shop) => {
    shop.gateSets.push(shop.gateSets[0]);
  }),
  broken('the reserved id', 'sections[0].id (section "collector")', 'kept', (shop) => {
    shop.sections[0].id = 'collector';
  }),
  broken(
    'an unknown section',
    'sections[2].into (section "planer-end")',
    '"planer-run"',
    (shop) => {
      shop.sections[2].into = 'planer-rum';
    },
  ),
  broken('a section into a drop', 'sections[2].into (section "planer-end")', 'a drop', (shop) => {
    shop.sections[2].into = 'saw';
  }),
  broken('a section into itself', 'sections[2].into (section "planer-end")', 'itself', (shop) => {
    shop.sections[2].into = 'planer-end';
  }),
  broken('a ring', 'sections[1].into (section "planer-run")', 'ring', (shop) => {
    shop.sections[1].into = 'planer-end';
  }),
  broken('what leads into a ring', 'sections[3].into (section "saw-run")', 'never', (shop) => {
    shop.sections[1].into = 'planer-end';
    shop.sections[3].into = 'planer-run';
  }),
  broken('no root', 'sections', 'exactly one', (shop) => (shop.sections[0].into = 'saw-run')),
  broken('two roots', 'sections[3].into (section "saw-run")', '"main"', (shop) => {
    shop.sections[3].into = 'collector';
  }),
  broken('an orphan', 'sections[4] (section "orphan")', 'neither', (shop) => {
    shop.sections.push({ ...shop.sections[3], id: 'orphan' });
  }),
  broken('a section without a drop', 'sections[3] (section "saw-run")', 'neither', (shop) => {
    shop.drops.length = 1;
  }),
  broken('a drop into nothing', 'drops[1].into (drop "saw")', '"saw-run"', (shop) => {
    shop.drops[1].into = 'saw-ruin';
  }),
  broken('a drop into the main', 'drops[1].into (drop "saw")', 'of its own', (shop) => {
    shop.drops[1].into = 'main';
  }),
  broken('two drops into one section', 'drops[1].into (drop "saw")', '"planer"', (shop) => {
    shop.drops[1].into = 'planer-end';
  }),
  broken('a wye without a join', 'sections[3].join (section "saw-run")', 'missing', (shop) => {
    delete shop.sections[3].join;
  }),
  broken('a join without a wye', 'sections[2].join (section "planer-end")', 'leave', (shop) => {
    shop.sections[2].join = { kind: 'momentum', angle: 0 };
  }),
  broken('a wye of two kinds', 'sections[3].join.kind (section "saw-run")', 'same kind', (shop) => {
    shop.sections[3].join = { kind: 'fixed', coefficient: 0.28, of: 'own' };
  }),
  broken('a transition at a wye', 'sections[3].transition (section "saw-run")', 'wye', (shop) => {
    shop.sections[3].transition = { kind: 'sudden' };
  }),
  broken('an unknown drop in a set', 'gateSets[0].open[1] (gate set "both")', '"saw"', (shop) => {
    shop.gateSets[0].open[1] = 'sow';
  }),
  broken('a price of one item twice', 'purchase.prices[1].item', 'second', (shop) => {
    const price = { item: 'gate-100mm', price: 20 };
    shop.purchase = { prices: [price, price] };
  }),
  broken('a stock length of no family', 'purchase.stockLengths[0].family', 'spiral', (shop) => {
    shop.purchase = { stockLengths: [{ family: 'galvanized-spiral', length: 3 }] };
  }),
  broken('a currency by its sign', 'purchase.currency', 'three capital', (shop) => {
    shop.purchase = { currency: '€' };
  }),
  broken('a drop twice in a set', 'gateSets[0].open[1] (gate set "both")', 'second', (shop) => {
    shop.gateSets[0].open[1] = 'planer';
  }),
];

const wrongForDucts: readonly BrokenFile[] = [
  broken(
    'an unknown family',
    'sections[0].pipe.family (section "main")',
    'galvanised-spiral',
    (shop) => {
      shop.sections[0].pipe = { kind: 'catalogue', family: 'galvanized-spiral', size: '150mm' };
    },
  ),
  broken('an unknown size', 'sections[0].pipe.size (section "main")', '"150mm"', (shop) => {
    shop.sections[0].pipe = { kind: 'catalogue', family: 'galvanised-spiral', size: '155mm' };
  }),
  broken('an unknown hood', 'drops[0].hood.id (drop "planer")', '"plain-end"', (shop) => {
    shop.drops[0].hood = { kind: 'table', id: 'plain-ent' };
  }),
  broken('an unknown machine', 'drops[1].machine (drop "saw")', 'known are', (shop) => {
    shop.drops[1].machine = 'time-machine';
  }),
  broken('a wall of gravel', 'sections[3].pipe.roughness (section "saw-run")', '0.01', (shop) => {
    shop.sections[3].pipe.roughness = 0.015;
  }),
  broken('a hood that gains', 'drops[0].hood.suction (drop "planer")', '240 Pa', (shop) => {
    shop.drops[0].hood = { kind: 'measured', suction: 200, velocity: 20 };
  }),
  broken('an end that nothing resists', 'drops[1] (drop "saw")', 'nothing that resists', (shop) => {
    shop.drops[1].hood.coefficient = 0;
    delete shop.drops[1].gate;
    shop.sections[3].length = 0;
  }),
  broken('a cone at the flange', 'sections[0].transition (section "main")', 'plain', (shop) => {
    shop.sections[0].transition = { kind: 'taper', angle: 30 };
  }),
];

export const brokenFiles: readonly BrokenFile[] = [
  ...notReadable,
  ...notAShop,
  ...wrongShape,
  ...wrongTogether,
  ...wrongForDucts,
];
