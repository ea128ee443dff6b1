import { describe, expect, it } from 'vitest';
import { curvesFile, openCurves } from '../../../../src/shop/curves/curve-files.ts';
import { curvesCsv } from '../../../../src/shop/curves/curves-csv.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { openCurve } from '../../../../src/shop/open-curve.ts';

const examples = exampleCurves();

describe('curves as files', () => {
  it('come back as they were: one as the same JSON as in curves/, many as a list', () => {
    const one = curvesFile([examples[0]!]);
    expect(openCurve(one.text)).toEqual({ kind: 'opened', curve: examples[0] });
    expect(one.name).toMatch(/^1-hp-wall-bag-unit.*\.json$/);
    const many = curvesFile(examples);
    expect(openCurves(many)).toEqual({ curves: examples, problems: [] });
  });

  it('come back from CSV with all that CSV holds, whatever is written in a note', () => {
    const curves = examples.map((curve, i) => ({
      ...curve,
      note: `=1+1, "quoted"\nsecond line; ${i}`,
      points: curve.points.map((point, at) =>
        at === 1 ? { ...point, aside: true as const } : point,
      ),
    }));
    const file = curvesCsv(curves);
    expect(file.text.startsWith('\ufeffname,')).toBe(true);
    expect(file.text).toContain('"\'=1+1, ""quoted""');
    const { curves: read, problems } = openCurves(file);
    expect(problems).toEqual([]);
    for (const [i, curve] of read.entries()) {
      const { name, note, basis, includes, density, points } = curves[i]!;
      expect(curve).toMatchObject({ name, note, basis, includes, density, points });
    }
    expect(read).toHaveLength(curves.length);
  });

  it('are read from CSV with semicolons and decimal commas', () => {
    const text =
      'name;flow [m³/s];pressure [Pa]\r\nOurs;0;2400,5\r\nOurs;0,5;900\r\nOther;0;100\r\nOther;1;10\r\n';
    const { curves, problems } = openCurves({ name: 'a.csv', text });
    expect(problems).toEqual([]);
    expect(curves.map(({ name }) => name)).toEqual(['Ours', 'Other']);
    expect(curves[0]!.points).toEqual([
      { flow: 0, pressure: 2400.5 },
      { flow: 0.5, pressure: 900 },
    ]);
  });

  it('are refused with the place and the reason, one by one', () => {
    const list = JSON.stringify([examples[0], { ...examples[1], points: [] }, 7]);
    const { curves, problems } = openCurves({ name: 'mixed.json', text: list });
    expect(curves).toEqual([examples[0]]);
    expect(problems[0]).toEqual({
      place: '[1]: points',
      message: expect.stringMatching(/list of 2 to 5000 points/),
    });
    expect(problems[1]!.place).toBe('[2]: the file');
    const noFlow = openCurves({ name: 'a.csv', text: 'name,pressure [Pa]\nOurs,5' });
    expect(noFlow.problems[0]!.message).toMatch(/^lacks the column “flow \[m³\/s\]”/);
    const word = openCurves({
      name: 'a.csv',
      text: 'name,flow [m³/s],pressure [Pa]\nOurs,0,much\nOurs,1,2',
    });
    expect(word.problems[0]!.place).toBe('line 2: points[0].pressure');
    expect(openCurves({ name: 'a.json', text: '{' }).problems[0]!.place).toMatch(/^line 1/);
  });
});
