// One config for the page, its preview and the three test projects.
// The Vite root is src/, so every path below is absolute.
import { playwright } from '@vitest/browser-playwright';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import { firstChunk } from './src/app/build/first-chunk.ts';
import { noRequests } from './src/app/build/no-requests.ts';
import { policyHeaders } from './src/app/build/policy-headers.ts';
import { serviceWorker } from './src/app/build/service-worker.ts';
import { chromiumArguments, findChromium } from './tests/setup/find-chromium.ts';
import { keepModules } from './tests/setup/keep-modules.ts';
import { openWcTesting } from './tests/setup/open-wc-testing.ts';
import { tallyReporter } from './tests/setup/tally-reporter.ts';

const repository = import.meta.dirname;
const at = (...parts: string[]) => join(repository, ...parts);
const chromium = findChromium();

export default defineConfig({
  root: at('src'),
  base: './',
  cacheDir: at('.cache/vite'),
  plugins: [noRequests(), serviceWorker()],
  resolve: { alias: { 'd3-color': at('src/app/build/no-colours.ts') } },
  // As it stands, so that it passes the same plugin in tests as in the build.
  optimizeDeps: { exclude: ['pdfjs-dist'] },
  server: { fs: { allow: [repository] } },
  build: {
    outDir: at('dist'),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: firstChunk(), debugName: 'first' }] } },
    },
  },
  worker: { format: 'es', plugins: () => [noRequests()] },
  preview: {
    host: '127.0.0.1',
    port: Number(process.env['PORT'] ?? 4173),
    headers: policyHeaders(),
  },
  test: {
    reporters: ['default', tallyReporter],
    onConsoleLog: (log) => !log.startsWith('Lit is in dev mode'),
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          dir: at('tests'),
          include: [at('tests/unit/**/*.test.ts'), at('tests/reference/**/*.test.ts')],
          testTimeout: 60_000,
          // Modules keep nothing that one test could leave to another, so each is read in once.
          isolate: false,
          // Nothing waits here, so every processor works; pages in a browser come after.
          maxWorkers: '100%',
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        plugins: [openWcTesting(), keepModules()],
        optimizeDeps: {
          entries: [at('tests/component/**/*.test.ts')],
          exclude: ['@web/test-runner-commands'],
          include: ['@open-wc/testing > @esm-bundle/chai', '@open-wc/testing > chai-a11y-axe'],
        },
        test: {
          name: 'component',
          dir: at('tests'),
          include: [at('tests/component/**/*.test.ts')],
          testTimeout: 60_000,
          maxWorkers: '100%',
          sequence: { groupOrder: 2 },
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            viewport: { width: 1024, height: 768 },
            provider: playwright({
              launchOptions: {
                ...(chromium === undefined ? {} : { executablePath: chromium }),
                args: chromiumArguments,
              },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        extends: true,
        test: {
          name: 'e2e',
          environment: 'node',
          dir: at('tests'),
          include: [at('tests/e2e/**/*.test.ts')],
          globalSetup: [at('tests/setup/serve-built-page.ts')],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
