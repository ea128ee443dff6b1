// Before the end-to-end tests: builds the page into a folder of its own and serves it.
import type { TestProject } from 'vitest/node';
import { servePage } from './serve-page.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page, with a slash at its end. */
    pageAddress: string;
  }
}

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const page = await servePage();
  project.provide('pageAddress', page.address);
  return page.close;
}
