// Lets the browser keep the modules that it has been served: each file of component tests is a page of
// its own and asks again for some three hundred modules, which can't change while the tests run.

import type { Plugin } from 'vite';

/** Of modules only: the pages that hold the tests differ from one file to the next. */
const MODULE = /\.(?:ts|js|mjs)(?:\?.*)?$/;
/** Longer than any run [s]. */
const KEPT = 3600;

/** A plugin for tests in a browser. */
export function keepModules(): Plugin {
  return {
    name: 'keep-modules',
    configureServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        if (MODULE.test(request.url ?? '') && !request.url?.includes('__vitest')) {
          const set = response.setHeader.bind(response);
          response.setHeader = (name, value) =>
            set(name, value === 'no-cache' ? `max-age=${KEPT}` : value);
        }
        next();
      });
    },
  };
}
