// Takes out of the PDF reader what could ask for anything. The page hands it a whole file and none of the
// addresses that it would load more from, so none of this ever runs; it is taken out so that the built
// scripts can be seen to ask nobody, worker or not.

import type { Plugin } from 'vite';

/** Its own look-ups inside a file carry the name of a request, too. They are all renamed; what is left of
 * true requests then calls a name that does not exist. */
const RENAMED = [
  [/\bfetch\(/g, 'lookUp('],
  [/\bXMLHttpRequest\b/g, 'NoRequest'],
] as const;
/** Loads another script. */
const LOADED = /\bimport\(\s*\/\*webpackIgnore: true\*\/\s*\/\*@vite-ignore\*\/\s*[\w.]+\)/g;
/** Stands in every such call; it would be left in one that is written otherwise. */
const OTHER_SCRIPT = /webpackIgnore/;
const REFUSED = "Promise.reject(new Error('no other script is loaded'))";

export function noRequests(): Plugin {
  return {
    name: 'no-requests',
    transform(code, id) {
      if (!/\/pdfjs-dist\/.*\.mjs$/.test(id)) return undefined;
      const renamed = RENAMED.reduce((text, [name, other]) => {
        const without = text.replaceAll(name, other);
        if (without === text) throw new Error(`${id} has no ${name.source}: look at it anew`);
        return without;
      }, code);
      const alone = renamed.replaceAll(LOADED, REFUSED);
      if (OTHER_SCRIPT.test(alone)) throw new Error(`${id} loads another script: look at it anew`);
      return { code: alone, map: null };
    },
  };
}
