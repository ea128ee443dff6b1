// What the page needs before anything else, in one script: many small ones compress worse, and each is
// asked for by itself.

/** What the bundler knows of a module. */
interface Modules {
  readonly getModuleInfo: (
    id: string,
  ) => { readonly isEntry: boolean; readonly importers: readonly string[] } | null;
}

/**
 * Tells what the first script holds: everything that it imports for certain, and not on demand only.
 *
 * @returns names the chunk of a module, or none
 */
export function firstChunk(): (id: string, modules: Modules) => string | null {
  const known = new Map<string, boolean>();
  const isFirst = (id: string, modules: Modules): boolean => {
    const answer = known.get(id);
    if (answer !== undefined) return answer;
    known.set(id, false);
    const info = modules.getModuleInfo(id);
    const first =
      info !== null &&
      (info.isEntry || info.importers.some((importer) => isFirst(importer, modules)));
    known.set(id, first);
    return first;
  };
  return (id, modules) => (isFirst(id, modules) ? 'first' : null);
}
