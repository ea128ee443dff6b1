// Leaves out of the built page what writes JSON Schemas. Only `npm run schema` does that; zod hangs it
// on every schema, so no bundler finds by itself that the page never calls it.
import type { Plugin } from 'vite';

const MODULES = /\/zod\/v4\/core\/(?:json-schema-processors|to-json-schema)\.js$/;
const EXPORTS = /^export (?:function|const) (\w+)/gm;

export function leaveOutJsonSchema(): Plugin {
  return {
    name: 'leave-out-json-schema',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!MODULES.test(id)) return undefined;
      const names = [...code.matchAll(EXPORTS)].map(([, name]) => name);
      const leftOut = `const leftOut = () => { throw new RangeError('no JSON Schema on the page'); };`;
      const stubs = [...names, 'process'].map((name) => `leftOut as ${name}`);
      return { code: `${leftOut}\nexport { ${stubs.join(', ')} };`, map: null };
    },
  };
}
