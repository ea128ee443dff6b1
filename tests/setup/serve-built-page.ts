// Before the end-to-end tests: builds the page into a folder of its own and serves it.
import type { TestProject } from 'vitest/node';
import { servePage } from './serve-page.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page, with a slash at its end; empty where it did not build. */
    pageAddress: string;
    /** Where the built files are. */
    pageFolder: string;
  }
}

/** A page that does not build fails the end-to-end tests, and leaves all others to be run. */
export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  try {
    const page = await servePage();
    project.provide('pageAddress', page.address);
    project.provide('pageFolder', page.folder);
    return page.close;
  } catch (error) {
    console.error(error);
    project.provide('pageAddress', '');
    project.provide('pageFolder', '');
    return undefined;
  }
}
