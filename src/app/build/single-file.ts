// `npm run single`: the whole page as one HTML file, dropcurve.html, that runs from a stick or a disk.
// Scripts, style and icon stand in it; its own policy allows just them, each by its hash. Goes into the
// folder that is named, otherwise into dist/.
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';

const repository = join(import.meta.dirname, '..', '..', '..');
export const SINGLE_FILE = 'dropcurve.html';

/** Builds the page once more, in one script, and writes it into a folder. */
export async function writeSingleFile(target: string): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-single-'));
  try {
    await build({
      configFile: join(repository, 'vite.config.ts'),
      logLevel: 'warn',
      mode: 'single',
      // Plain scripts: others are not begun from the disk.
      worker: { format: 'iife' },
      build: {
        outDir: folder,
        emptyOutDir: true,
        assetsInlineLimit: Number.MAX_SAFE_INTEGER,
        cssCodeSplit: false,
        chunkSizeWarningLimit: Number.MAX_SAFE_INTEGER,
        rolldownOptions: { output: { codeSplitting: false } },
      },
    });
    writeFileSync(join(target, SINGLE_FILE), inOneFile(folder));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function inOneFile(folder: string): string {
  const read = (address: string) => readFileSync(join(folder, address), 'utf8');
  const html = read('index.html');
  const entry = /<script type="module"[^>]* src="\.\/([^"]+)"><\/script>/.exec(html);
  const style = /<link rel="stylesheet"[^>]* href="\.\/([^"]+)">/.exec(html);
  if (!entry?.[1] || !style?.[1]) throw new Error('the page has no script or no style');
  const script = withWorkers(read(entry[1]), folder, entry[1]).replaceAll(
    /<(?=\/script|!--)/gi,
    String.raw`\x3C`,
  );
  const css = read(style[1]);
  const icon = `data:image/svg+xml;base64,${Buffer.from(read('icon.svg')).toString('base64')}`;
  return html
    .replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, () => policyFor(script, css))
    .replace(/<link rel="(?:manifest|apple-touch-icon)"[^>]*>\s*/g, '')
    .replace('./icon.svg', () => icon)
    .replace(entry[0], () => `<script type="module">${script}</script>`)
    .replace(style[0], () => `<style>${css}</style>`);
}

/** A worker's script stands in the page's as a text, and is begun from there. */
function withWorkers(script: string, folder: string, entry: string): string {
  const workers = readdirSync(join(folder, 'assets')).filter(
    (name) => name.endsWith('.js') && !entry.endsWith(name),
  );
  return workers.reduce((text, name) => {
    const address = new RegExp(
      String.raw`(?:""\s*\+\s*)?new URL\(\s*(["'\`])[^"'\`]*${name.replaceAll('.', String.raw`\.`)}\1\s*,\s*(?:""\s*\+\s*)?import\.meta\.url\)(?:\.href)?`,
      'g',
    );
    if (!address.test(text)) throw new Error(`the page does not say where ${name} is`);
    const body = JSON.stringify(readFileSync(join(folder, 'assets', name), 'utf8'));
    const inside = `URL.createObjectURL(new Blob([${body}],{type:"text/javascript"}))`;
    return text.replace(address, () => inside);
  }, script);
}

function policyFor(script: string, style: string): string {
  const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const rules = [
    "default-src 'none'",
    `script-src ${hash(script)}`,
    `style-src ${hash(style)}`,
    'img-src data: blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types lit-html app-script-url',
  ];
  return `<meta http-equiv="Content-Security-Policy" content="${rules.join('; ')}">`;
}

if (process.argv[1] === import.meta.filename) {
  await writeSingleFile(process.argv[2] ?? join(repository, 'dist'));
}
