// A duct tree handed to a general-purpose solver for water mains, through its text input: EPANET
// 2.x (public domain, U.S. EPA), in the npm package epanet-js. Gas-like fluid, Darcy–Weisbach pipes,
// reservoirs at every open end and behind the collector, which is a pump with a sampled curve.
//
// What its manual does not say and a comparison needs: in foot units g is 32.2 ft/s²; pipe friction
// uses π to enough digits but minor losses a constant cut to 0.02517; pumps interpolate straight.

import { InitHydOption, LinkProperty, Project, Workspace } from 'epanet-js';
import type { Air } from '../../src/air/air.ts';
import { availableSuction, type CollectorCurve } from '../../src/curve/collector-curve.ts';
import type { SectionInput } from '../../src/solve/network.ts';

const FOOT = 0.3048;
const CUBIC_FOOT = FOOT ** 3;
const ENGINE_G = 32.2;
/** The engine's unit of viscosity, that of water [ft²/s]. */
const WATER_VISCOSITY = 1.1e-5;
/** Its rounded 8/(π²·g), undone. */
const MINOR_LOSS = 8 / (Math.PI ** 2 * ENGINE_G) / 0.02517;
const CURVE_SAMPLES = 2000;

export interface WaterTree {
  readonly sections: readonly SectionInput[];
  /** Whole loss coefficient of each section on its own velocity pressure, gate and wye in [-]. */
  readonly coefficients: ArrayLike<number>;
  readonly curve: CollectorCurve;
  readonly air: Air;
  /** Flow up to which the collector's curve is sampled [m³/s]. */
  readonly reach: number;
}

/** An opened model of one tree. */
export interface WaterModel {
  readonly project: Project;
  /** Sets the coefficient of a section. */
  setCoefficient(section: number, coefficient: number): void;
  /** One solve by the engine's own call, nothing read. */
  solveBare(): void;
  /** One solve through the package's interface, nothing read. */
  solve(): void;
  /** Flow of each section [m³/s]. */
  flows(): number[];
  close(): void;
}

/** Loads the engine; one workspace serves many models, one after the other. */
export async function loadWaterEngine(): Promise<Workspace> {
  const workspace = new Workspace();
  await workspace.loadModule();
  return workspace;
}

/** Opens a tree in the engine, ready to be solved. */
export function openWaterModel(workspace: Workspace, tree: WaterTree): WaterModel {
  workspace.writeFile('tree.inp', inputText(tree));
  const project = new Project(workspace);
  project.open('tree.inp', 'tree.rpt', 'tree.bin');
  project.openH();
  project.initH(InitHydOption.NoSave);
  const links = tree.sections.map((_, section) => project.getLinkIndex(`p${section}`));
  const bare = bareRun(project);
  return {
    project,
    setCoefficient: (section, coefficient) =>
      project.setLinkValue(links[section]!, LinkProperty.MinorLoss, coefficient * MINOR_LOSS),
    solveBare: bare,
    solve: () => {
      project.runH();
    },
    flows: () => links.map((link) => project.getLinkValue(link, LinkProperty.Flow) * CUBIC_FOOT),
    close: () => {
      project.closeH();
      project.close();
    },
  };
}

function inputText(tree: WaterTree): string {
  const { sections, curve, air } = tree;
  const head = (pressure: number) => pressure / (ENGINE_G * FOOT ** 2 * air.density);
  const fed = new Set(sections.map((section) => section.into));
  const below = (into: number) => (into < 0 ? 'flange' : `n${into}`);
  const ends = sections.map((_, i) => ({ id: `n${i}`, isOpen: !fed.has(i) }));
  const junctions = ends.filter((end) => !end.isOpen).map((end) => end.id);
  const rooms = ends.filter((end) => end.isOpen).map((end) => end.id);
  const pipes = sections.map((section, i) => {
    const length = section.frictional * section.diameter;
    const k = tree.coefficients[i]! * MINOR_LOSS;
    const inches = (section.diameter / FOOT) * 12;
    const millifeet = (section.roughness / FOOT) * 1000;
    return `p${i} n${i} ${below(section.into)} ${length / FOOT} ${inches} ${millifeet} ${k} Open`;
  });
  const samples = Array.from({ length: CURVE_SAMPLES }, (_, i) => {
    const flow = (tree.reach * i) / (CURVE_SAMPLES - 1);
    return `c ${flow / CUBIC_FOOT} ${head(availableSuction(curve, flow))}`;
  });
  const viscosity = air.viscosity / air.density / FOOT ** 2 / WATER_VISCOSITY;
  return [
    '[JUNCTIONS]',
    ...['flange', ...junctions].map((id) => `${id} 0 0`),
    '[RESERVOIRS]',
    ...[...rooms, 'outlet'].map((id) => `${id} 0`),
    '[PIPES]',
    ...pipes,
    '[PUMPS]',
    'fan flange outlet HEAD c',
    '[CURVES]',
    ...samples,
    '[OPTIONS]',
    'UNITS CFS',
    'HEADLOSS D-W',
    `SPECIFIC GRAVITY ${air.density / 1000}`,
    `VISCOSITY ${viscosity}`,
    'TRIALS 200',
    'ACCURACY 1e-8',
    'HEADERROR 1e-8',
    'FLOWCHANGE 1e-8',
    'CHECKFREQ 100000',
    'MAXCHECK 100000',
    '[TIMES]',
    'DURATION 0',
    '[END]',
  ].join('\n');
}

/** The engine's solve without the package around it: its two arguments are made ready once. */
function bareRun(project: Project): () => void {
  const { _EN: engine, _projectHandle: handle } = project as unknown as {
    readonly _EN: {
      _EN_runH(handle: number, time: number): number;
      _malloc(bytes: number): number;
    };
    readonly _projectHandle: number;
  };
  const time = engine._malloc(8);
  return () => {
    engine._EN_runH(handle, time);
  };
}
