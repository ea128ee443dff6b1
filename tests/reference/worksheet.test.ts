// Lines of published industrial-ventilation worksheets (ACGIH, velocity-pressure method), worked
// through with our own pieces. Sources and sheets are in shared/checks-worksheets.json.
import { describe, expect, it } from 'vitest';
import sheets from '../../shared/checks-worksheets.json' with { type: 'json' };
import { STANDARD_DENSITY, velocityPressure } from '../../src/air/velocity-pressure.ts';
import {
  plainCoefficient,
  sumOfCoefficients,
  timesCoefficient,
} from '../../src/duct/coefficient.ts';
import { colebrook } from '../../src/duct/colebrook.ts';
import { hoodStaticPressure } from '../../src/duct/hood.ts';
import { worksheetFriction } from '../../src/duct/worksheet-friction.ts';

const INCH_OF_WATER = 249.08891;
const FOOT = 0.3048;
const FOOT_PER_MINUTE = 0.00508;
const CFM = 4.719474432e-4;

/** The density with which (V/4005)² inches of water, the sheets' rule, is ½ρV². */
const SHEET_DENSITY =
  (2 * INCH_OF_WATER) / (sheets.conventions.velocityPressureConstant * FOOT_PER_MINUTE) ** 2;

const inches = (pascals: number) => pascals / INCH_OF_WATER;

describe('design problem 2, segment a–b: 390 cfm in a 4 in. branch', () => {
  const { velocity, hoodLoss, length, frictionPerFoot } = sheets.hood;
  const branch = (density: number) => {
    const pressure = velocityPressure(density, velocity * FOOT_PER_MINUTE);
    const hood = hoodStaticPressure(hoodLoss, pressure);
    return { hood: inches(hood), branch: inches(hood + frictionPerFoot * length * pressure) };
  };

  it('hood and branch static pressure, to the digits of the sheet', () => {
    const { hoodStaticPressure: hood, branchStaticPressure } = sheets.hood;
    expect(branch(SHEET_DENSITY).hood).toBeCloseTo(hood.value, hood.decimals);
    expect(branch(SHEET_DENSITY).branch).toBeCloseTo(
      branchStaticPressure.value,
      branchStaticPressure.decimals,
    );
  });

  it('lies 0.2 % lower in standard air and inches of water at 4 °C', () => {
    // 4005 belongs to water at room temperature and rounded air.
    expect(branch(STANDARD_DENSITY).hood / sheets.hood.hoodStaticPressure.value).toBeCloseTo(
      0.998,
      3,
    );
  });
});

describe('duct friction sheet: 6500 cfm to the fan and out again', () => {
  const { sections, hoodLoss, elbow, entry, fanStaticPressure, tolerance } = sheets.system;
  const worked = sections.map((section) => {
    const flow = section.flow * CFM;
    const velocity = section.velocity * FOOT_PER_MINUTE;
    const friction = worksheetFriction(velocity, flow);
    const coefficient = sumOfCoefficients([
      plainCoefficient(friction * section.length * FOOT),
      timesCoefficient(plainCoefficient(elbow), section.elbows),
      timesCoefficient(plainCoefficient(entry), section.entries),
    ]).fixed;
    const pressure = inches(velocityPressure(SHEET_DENSITY, velocity));
    return { ...section, friction, pressure, worked: coefficient * pressure };
  });

  it.each(worked)('$name: H_f $frictionPerFoot, loss $loss in. w.g.', (section) => {
    expect(Math.abs(section.friction * FOOT - section.frictionPerFoot)).toBeLessThanOrEqual(
      sheets.fit.tolerance.friction,
    );
    expect(Math.abs(section.worked - section.loss)).toBeLessThanOrEqual(tolerance.pressure);
  });

  it('fan static pressure 4.30 in. w.g.', () => {
    const inlet = worked.slice(0, 3);
    const suction =
      inlet.reduce((sum, section) => sum + section.worked, 0) +
      hoodStaticPressure(hoodLoss, inlet[0]?.pressure ?? Number.NaN);
    const outlet = worked[3]?.worked ?? Number.NaN;
    const fan = outlet + suction - (inlet[2]?.pressure ?? Number.NaN);
    expect(fan).toBeCloseTo(fanStaticPressure, 2);
  });
});

describe('the friction fit of the sheets against Colebrook', () => {
  // 1000 cfm in a 6 in. duct, a usual main, in standard air.
  const flow = 1000 * CFM;
  const diameter = 0.1524;
  const velocity = flow / ((Math.PI / 4) * diameter ** 2);
  const reynolds = (STANDARD_DENSITY * velocity * diameter) / 1.81e-5;
  const ratio = (roughness: number) =>
    worksheetFriction(velocity, flow) /
    (colebrook.factor(reynolds, roughness / diameter) / diameter);

  it('has Colebrook 11 % below it at the roughness of modern galvanised duct, 0.09 mm', () => {
    expect(1 - 1 / ratio(0.09e-3)).toBeCloseTo(0.11, 2);
  });

  it('agrees to 3 % at that of duct with a joint every 2.5 ft, 0.15 mm', () => {
    expect(Math.abs(ratio(0.15e-3) - 1)).toBeLessThan(0.03);
  });
});
