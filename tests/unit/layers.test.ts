// The order of the house, read off the imports: a room sees itself and the rooms below it.
import { describe, expect, it } from 'vitest';
import { cycles, exportFaults, importFaults, purityFaults } from '../setup/layer-faults.ts';
import { sourceFile, sourceFiles } from '../setup/source-files.ts';

const files = sourceFiles();

describe('the rooms of src/', () => {
  it('are read: the lowest and the highest are among them', () => {
    const found = files.map((file) => file.room);
    expect(found).toContain('units');
    expect(found).toContain('app');
  });

  it('import only themselves, lower rooms and the packages they are allowed', () => {
    expect(files.flatMap(importFaults)).toEqual([]);
  });

  it('hold no import cycle, types included', () => {
    expect(cycles(files)).toEqual([]);
  });

  it('hold no barrel, no default export, no enum and no file named for nothing', () => {
    expect(files.flatMap(exportFaults)).toEqual([]);
  });

  it('keep page, clock, chance and terminal out of the core', () => {
    expect(files.flatMap(purityFaults)).toEqual([]);
  });
});

describe('the reader of imports', () => {
  const faultsOf = (path: string, text: string) => importFaults(sourceFile(path, text));

  it('catches a type that is taken from a higher room', () => {
    const text = "import type { Shop } from '../shop/shop.ts';";
    expect(faultsOf('src/solve/a.ts', text)).toHaveLength(1);
    expect(faultsOf('src/state/a.ts', text)).toEqual([]);
  });

  it('catches a package outside its room, also when imported late', () => {
    expect(faultsOf('src/plot/a.ts', "const d3 = await import('d3-scale');")).toEqual([]);
    expect(faultsOf('src/ui/a.ts', "const d3 = await import('d3-scale');")).toHaveLength(1);
    expect(faultsOf('src/curve/a.ts', "import { z } from 'zod';")).toHaveLength(1);
    expect(faultsOf('src/ui/a.ts', "import {\n  html,\n} from 'lit/html.js';")).toEqual([]);
  });

  it('lets data come in from shared/ and curves/ and nothing else from outside', () => {
    expect(faultsOf('src/duct/a.ts', "import pipes from '../../shared/pipes.json';")).toEqual([]);
    expect(faultsOf('src/duct/a.ts', "import '../../tests/setup/rooms.ts';")).toHaveLength(1);
  });

  it('is not misled by comments and strings', () => {
    const text = `// import { a } from 'zod';\nconst t = \`import { b } from "\${'}'}zod"\`;\n/* export default */`;
    expect(
      faultsOf('src/math/a.ts', "/* import 'zod' */ const f = /[/'\"]/; // import 'lit'"),
    ).toEqual([]);
    expect(exportFaults(sourceFile('src/math/a.ts', text))).toEqual([]);
  });

  it('catches a ring of three files', () => {
    const ring = ['b', 'c', 'a'].map((to, index) =>
      sourceFile(`src/math/${'abc'.charAt(index)}.ts`, `import type { T } from './${to}.ts';`),
    );
    expect(cycles(ring)).toEqual(['src/math/a.ts → src/math/b.ts → src/math/c.ts → src/math/a.ts']);
  });

  it('catches barrels, default exports and a core that looks at the clock', () => {
    const faults = (text: string) => exportFaults(sourceFile('src/math/a.ts', text));
    expect(faults("export * from './b.ts';")).toHaveLength(1);
    expect(faults("export { b } from './b.ts';")).toHaveLength(1);
    expect(faults('const a = 1;\nexport { a as default };')).toHaveLength(1);
    expect(exportFaults(sourceFile('src/math/index.ts', ''))).toHaveLength(1);
    expect(purityFaults(sourceFile('src/math/a.ts', 'const t = Date.now();'))).toHaveLength(1);
    expect(purityFaults(sourceFile('src/app/a.ts', 'const t = Date.now();'))).toEqual([]);
  });
});
