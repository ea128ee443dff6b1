// Builds the service worker beside the page: sw.js, with the list of all files of this build and a
// version that changes when any of them does.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Plugin, transformWithOxc } from 'vite';

const source = join(import.meta.dirname, '..', 'service-worker.ts');
/** Not part of the page: what servers read, what only tools read, the worker itself. */
const LEFT_OUT = /^(?:_headers|sw\.js|dropcurve\.html)$|\.map$/;

export function serviceWorker(): Plugin {
  let folder = '';
  return {
    name: 'service-worker',
    apply: 'build',
    configResolved({ build }) {
      folder = build.outDir;
    },
    async closeBundle() {
      await writeServiceWorker(folder);
    },
  };
}

/** Writes sw.js for the files that lie in a folder. */
export async function writeServiceWorker(folder: string): Promise<void> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !LEFT_OUT.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .toSorted();
  const hash = createHash('sha256');
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  const text = readFileSync(source, 'utf8');
  hash.update(text);
  const { code } = await transformWithOxc(text, source);
  const addresses = files.map((file) => (file === 'index.html' ? './' : `./${file}`));
  const filled = `const PAGE_VERSION = ${JSON.stringify(hash.digest('hex').slice(0, 12))};
const PAGE_FILES = ${JSON.stringify(addresses)};
${code}`;
  writeFileSync(join(folder, 'sw.js'), filled);
}
