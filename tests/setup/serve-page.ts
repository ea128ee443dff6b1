// Builds the page as it is shipped and serves it on a free port, for tests and pictures.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';

const repository = join(import.meta.dirname, '..', '..');

export interface ServedPage {
  readonly address: string;
  /** Where the built files are, source maps among them. */
  readonly folder: string;
  readonly close: () => Promise<void>;
}

/** A folder of its own, so that neither dist/ nor a second run is disturbed. */
export async function servePage(): Promise<ServedPage> {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-'));
  const removeFolder = () => rmSync(folder, { recursive: true, force: true });
  try {
    build(folder);
    run('node_modules/tsx/dist/cli.mjs', 'src/app/build/single-file.ts', folder);
  } catch (error) {
    removeFolder();
    throw error;
  }
  const server = await preview({
    configFile: join(repository, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0 },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the preview server gave no address');
  const close = async () => {
    await server.close();
    removeFolder();
  };
  return { address, folder, close };
}

/**
 * In a process of its own: a test run's NODE_ENV would make a development build. Source maps lie
 * beside the scripts, which don't mention them and are the same as without.
 */
function build(folder: string): void {
  const options = ['--logLevel', 'warn', '--sourcemap', 'hidden', '--outDir', folder];
  run('node_modules/vite/bin/vite.js', 'build', ...options);
}

function run(program: string, ...options: readonly string[]): void {
  const { NODE_ENV: _, ...environment } = process.env;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(repository, program), ...options],
    { cwd: repository, env: environment, encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`the page does not build:\n${stdout}${stderr}`);
}
