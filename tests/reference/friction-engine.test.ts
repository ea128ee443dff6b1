// Our second friction law against the engine that it was taken from: EPANET 2.2 (EPA/600/R-20/133),
// run through epanet-js. One pipe between two reservoirs; its flow gives the factor that was used.
import {
  FlowUnits,
  HeadLossType,
  InitHydOption,
  LinkProperty,
  LinkType,
  NodeProperty,
  NodeType,
  Option,
  Project,
  Workspace,
} from 'epanet-js';
import { beforeAll, describe, expect, it } from 'vitest';
import { swameeJain } from '../../src/duct/swamee-jain.ts';

// The engine's own units: feet and cubic feet a second; its g and its viscosity of water.
const GRAVITY = 32.2;
const VISCOSITY = 1.1e-5;
const DIAMETER = 0.5;
const LENGTH = 100;

const heads = [
  0.00005, 0.0001, 0.00015, 0.0002, 0.0003, 0.0005, 0.0008, 0.001, 0.002, 0.01, 0.1, 1, 10,
];
const roughnesses = [1e-6, 1e-4, 1e-3, 1e-2];
const cases = roughnesses.flatMap((roughness) => heads.map((head) => ({ roughness, head })));

describe('Swamee–Jain and Dunlop against the engine', () => {
  let project: Project;
  beforeAll(async () => {
    const workspace = new Workspace();
    await workspace.loadModule();
    project = new Project(workspace);
    project.init('report', 'results', FlowUnits.CFS, HeadLossType.DW);
    project.addNode('high', NodeType.Reservoir);
    project.addNode('low', NodeType.Reservoir);
    project.addLink('pipe', LinkType.Pipe, 'high', 'low');
    project.setOption(Option.Accuracy, 1e-8);
    project.setOption(Option.Trials, 200);
  });

  it.each(cases)('agrees at ε/D $roughness under $head ft', ({ roughness, head }) => {
    const { reynolds, factor } = solvePipe(project, roughness, head);
    // The engine stops when its flow changes by 1e-8; the factor goes with the square of the flow.
    expect(Math.abs(swameeJain.factor(reynolds, roughness) / factor - 1)).toBeLessThan(3e-8);
  });

  it('met the cubic as well as both laws beside it', () => {
    const met = cases.map(({ roughness, head }) => solvePipe(project, roughness, head).reynolds);
    expect(met.filter((reynolds) => reynolds < 2000).length).toBeGreaterThan(3);
    expect(met.filter((reynolds) => reynolds > 2000 && reynolds < 4000).length).toBeGreaterThan(3);
    expect(met.filter((reynolds) => reynolds > 4000).length).toBeGreaterThan(3);
  });
});

function solvePipe(project: Project, roughness: number, head: number) {
  const pipe = project.getLinkIndex('pipe');
  project.setPipeData(pipe, LENGTH, DIAMETER * 12, roughness * DIAMETER * 1000, 0);
  project.setNodeValue(project.getNodeIndex('high'), NodeProperty.Elevation, head);
  project.openH();
  project.initH(InitHydOption.InitFlow);
  project.runH();
  const flow = project.getLinkValue(pipe, LinkProperty.Flow);
  project.closeH();
  const velocity = flow / ((Math.PI / 4) * DIAMETER ** 2);
  return {
    reynolds: (velocity * DIAMETER) / VISCOSITY,
    factor: (head * DIAMETER * 2 * GRAVITY) / (LENGTH * velocity ** 2),
  };
}
