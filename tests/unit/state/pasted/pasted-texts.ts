// Texts as they come from spreadsheets, mails and leaflets, each with the points that it holds, read by
// hand. All numbers are invented. Pairs are in the units named, the flow first.

/** The units of the pairs. */
export type PairUnits = readonly [
  flow: 'cfm' | 'm3/h' | 'm3/s' | 'l/s',
  pressure: 'inwg' | 'Pa' | 'mmwg',
];

/** One text and what it holds. */
export interface PastedText {
  readonly name: string;
  readonly text: string;
  /** The page's units. */
  readonly system: 'us' | 'metric';
  readonly units: PairUnits;
  readonly pairs: readonly (readonly [flow: number, pressure: number])[];
  /** What is asked before, each with the answer given; none where nothing is left open. */
  readonly asked?: readonly (readonly [question: RegExp, answer: string])[];
  readonly understood?: RegExp;
}

const US: PairUnits = ['cfm', 'inwg'];
const METRIC: PairUnits = ['m3/h', 'Pa'];
const FALLING = [
  [0, 10.5],
  [400, 9.8],
  [800, 8.1],
  [1200, 4.25],
] as const;
const FLOW_UNIT = /^No unit is written for the flows/;
const PRESSURE_UNIT = /^No unit is written for the pressures/;

export const PASTED_TEXTS: readonly PastedText[] = [
  {
    name: 'two columns of a spreadsheet with a heading',
    text: 'Flow (cfm)\tStatic pressure (in. w.g.)\n0\t10.5\n400\t9.8\n800\t8.1\n1200\t4.25',
    system: 'metric',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'the same with carriage returns, blank lines and spaces at the ends',
    text: '\r\n  CFM \tinWC\r\n\r\n0\t10.5\r\n400\t 9.8 \r\n\r\n800\t8.1\r\n1200\t4.25\r\n\r\n',
    system: 'us',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'commas between thousands',
    text: 'CFM\tSP, in. w.g.\n0\t10.5\n400\t9.8\n800\t8.1\n1,200\t4.25',
    system: 'us',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'semicolons, decimal commas and points between thousands',
    text: 'Volumenstrom [m³/h];Unterdruck [Pa]\n0;2.450,5\n1.250;2.100\n2.500;1.020,5',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2450.5],
      [1250, 2100],
      [2500, 1020.5],
    ],
  },
  {
    name: 'a file of comma-separated values',
    text: 'flow,pressure\ncfm,inH2O\n0,10.5\n400,9.8\n800,8.1\n1200,4.25\n',
    system: 'us',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'quoted numbers with commas in them',
    text: '"Flow, cfm","SP, in. w.g."\n"0","10.5"\n"400","9.8"\n"1,200","4.25"',
    system: 'us',
    units: US,
    pairs: [
      [0, 10.5],
      [400, 9.8],
      [1200, 4.25],
    ],
  },
  {
    name: 'columns set with spaces',
    text: '  m3/h     kPa\n     0    2.40\n   900    2.15\n  1800    1.10',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
  },
  {
    name: 'single spaces',
    text: 'CFM inWC\n0 10.5\n400 9.8\n800 8.1\n1200 4.25',
    system: 'us',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'no-break spaces between thousands',
    text: 'Débit (m³/h)\tPression (Pa)\n0\t2\u00a0400\n1\u00a0250\t2\u202f100\n2\u00a0500\t1\u00a0020',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [1250, 2100],
      [2500, 1020],
    ],
  },
  {
    name: 'apostrophes between thousands',
    text: "m³/h\tPa\n0\t2'400\n1'250\t2'100",
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [1250, 2100],
    ],
  },
  {
    name: 'pressure before flow, as the units say',
    text: 'in. w.g.\tCFM\n10.5\t0\n9.8\t400\n8.1\t800\n4.25\t1200',
    system: 'us',
    units: US,
    pairs: FALLING,
    understood: /the flow stood in the column after the pressure/,
  },
  {
    name: 'pressure before flow, as the words say, without units',
    text: 'Static pressure\tAir flow\n10.5\t0\n9.8\t400\n8.1\t800\n4.25\t1200',
    system: 'us',
    units: US,
    pairs: FALLING,
    asked: [
      [FLOW_UNIT, 'cfm'],
      [PRESSURE_UNIT, 'in. w.g.'],
    ],
  },
  {
    name: 'bare columns that look swapped',
    text: '10.5\t0\n9.8\t400\n8.1\t800\n4.25\t1200',
    system: 'us',
    units: US,
    pairs: FALLING,
    asked: [
      [/look swapped/, '0 to 1200'],
      [FLOW_UNIT, 'cfm'],
      [PRESSURE_UNIT, 'in. w.g.'],
    ],
  },
  {
    name: 'bare columns by falling flow, which may look swapped and are not',
    text: '1200\t4.25\n800\t8.1\n400\t9.8\n0\t10.5',
    system: 'us',
    units: US,
    pairs: FALLING.toReversed(),
    asked: [
      [/look swapped/, '1200 to 0'],
      [FLOW_UNIT, 'cfm'],
      [PRESSURE_UNIT, 'in. w.g.'],
    ],
  },
  {
    name: 'no units at all',
    text: '0\t4800\n900\t2150\n1800\t1100',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 4800],
      [900, 2150],
      [1800, 1100],
    ],
    asked: [[FLOW_UNIT, 'm³/h']],
    understood: /Pa was not written, but nothing else would fit/,
  },
  {
    name: 'a mark that may be thousands or decimals',
    text: 'Flow\tPressure\n1.234\t2.400\n2.468\t1.100',
    system: 'metric',
    units: METRIC,
    pairs: [
      [1234, 2400],
      [2468, 1100],
    ],
    asked: [
      [/“1.234 2.400” can be read in more than one way/, 'flow 1234, pressure 2400'],
      [FLOW_UNIT, 'm³/h'],
      [PRESSURE_UNIT, 'Pa'],
    ],
  },
  {
    name: 'the same mark, settled by the unit',
    text: 'm³/s\tkPa\n0\t2.400\n0.250\t2.100\n0.500\t1.100',
    system: 'metric',
    units: ['m3/s', 'Pa'],
    pairs: [
      [0, 2400],
      [0.25, 2100],
      [0.5, 1100],
    ],
  },
  {
    name: 'litres per second and millimetres of water',
    text: 'l/s;mm H2O\n0;245\n250;210\n500;110',
    system: 'metric',
    units: ['l/s', 'mmwg'],
    pairs: [
      [0, 245],
      [250, 210],
      [500, 110],
    ],
  },
  {
    name: 'millibars with decimal commas, parted by single spaces',
    text: 'm³/h mbar\n0 24,5\n900 21,5\n1800 11',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2450],
      [900, 2150],
      [1800, 1100],
    ],
  },
  {
    name: 'a unit at each number',
    text: '0 cfm\t10.5 in. w.g.\n400 cfm\t9.8 in. w.g.\n1,200 cfm\t4.25 in. w.g.',
    system: 'metric',
    units: US,
    pairs: [
      [0, 10.5],
      [400, 9.8],
      [1200, 4.25],
    ],
  },
  {
    name: 'a sentence of a mail',
    text: 'Hello, we measured 400 cfm at 9.8 in. w.g. and 800 cfm at 8.1 in. w.g.\nThen 1,200 cfm at 4.25 in. w.g. Regards',
    system: 'us',
    units: US,
    pairs: [
      [400, 9.8],
      [800, 8.1],
      [1200, 4.25],
    ],
  },
  {
    name: 'text above and below the table',
    text: 'Here is the table of the 3 hp unit:\n\nCFM | SP (in. w.g.)\n--- | ---\n0 | 10.5\n400 | 9.8\n800 | 8.1\n1200 | 4.25\n\nMeasured with 1 clean filter.',
    system: 'us',
    units: US,
    pairs: FALLING,
    understood: /1 line passed over: “Measured with 1 clean filter\.”/,
  },
  {
    name: 'a framed table',
    text: '| Flow (m³/h) | Pressure (Pa) |\n|---|---|\n| 0 | 2400 |\n| 900 | 2150 |',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
    ],
  },
  {
    name: 'further columns with headings of their own',
    text: 'No.\tAir flow (m³/h)\tSpeed (rpm)\tStatic pressure (Pa)\tPower (kW)\n1\t0\t2850\t2400\t0.7\n2\t900\t2850\t2150\t1.1\n3\t1800\t2850\t1100\t1.8',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
  },
  {
    name: 'two collectors side by side',
    text: 'SP (in. w.g.)\tSmall (CFM)\tLarge (CFM)\n10\t0\t200\n8\t400\t800\n4\t800\t1300',
    system: 'us',
    units: US,
    pairs: [
      [200, 10],
      [800, 8],
      [1300, 4],
    ],
    asked: [
      [/Which are the flow and the pressure/, 'flow “Large (CFM)”, pressure “SP (in. w.g.)”'],
    ],
  },
  {
    name: 'a table on its side',
    text: 'Flow (cfm)\t0\t400\t800\t1,200\nSP (in. w.g.)\t10.5\t9.8\t8.1\t4.25',
    system: 'us',
    units: US,
    pairs: FALLING,
  },
  {
    name: 'numbered lines without headings',
    text: '1\t0\t2400\n2\t900\t2150\n3\t1800\t1100',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
    asked: [
      [FLOW_UNIT, 'm³/h'],
      [PRESSURE_UNIT, 'Pa'],
    ],
  },
  {
    name: 'a comma that parts cells and a comma that parts decimals',
    text: 'm³/h, kPa\n0, 2,4\n900, 2,15\n1800, 1,1',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
  },
  {
    name: 'unquoted commas between thousands in a comma-separated file',
    text: '1,200,8.5\n1,500,6.5\n1,800,4',
    system: 'us',
    units: US,
    pairs: [
      [1200, 8.5],
      [1500, 6.5],
      [1800, 4],
    ],
    asked: [
      [/“1,200,8.5” can be read in more than one way/, 'flow 1200, pressure 8.5'],
      [FLOW_UNIT, 'cfm'],
      [PRESSURE_UNIT, 'in. w.g.'],
    ],
  },
  {
    name: 'fractions of an inch',
    text: 'CFM\tSP in. w.g.\n0\t10 1/2\n400\t9 3/4\n800\t8½',
    system: 'us',
    units: US,
    pairs: [
      [0, 10.5],
      [400, 9.75],
      [800, 8.5],
    ],
  },
  {
    name: 'suction as negative numbers',
    text: 'm³/h\tPa\n0\t−2400\n900\t−2150\n1800\t−1100',
    system: 'metric',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
    understood: /negative pressures taken as suction/,
  },
  {
    name: 'a line above the table that names the units',
    text: 'Curve of the blower: flow in m³/h, total suction in Pa\n0\t2400\n900\t2150\n1800\t1100',
    system: 'us',
    units: METRIC,
    pairs: [
      [0, 2400],
      [900, 2150],
      [1800, 1100],
    ],
  },
  {
    name: 'some rows in another unit',
    text: 'Flow\tPressure\n0 cfm\t2400 Pa\n400 cfm\t2150 Pa\n1699.01079552 m³/h\t1 kPa',
    system: 'us',
    units: ['cfm', 'Pa'],
    pairs: [
      [0, 2400],
      [400, 2150],
      [1000, 1000],
    ],
  },
  {
    name: 'a table without a last value',
    text: 'CFM\tSP (in. w.g.)\n0\t10.5\n400\t9.8\n800\t\n1200\t4.25',
    system: 'us',
    units: US,
    pairs: [
      [0, 10.5],
      [400, 9.8],
      [1200, 4.25],
    ],
    understood: /1 line passed over: “800”/,
  },
];
