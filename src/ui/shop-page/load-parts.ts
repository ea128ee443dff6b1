// Loads the parts of the page that lie below the first screen, once that is drawn.

/** Defines the elements of those parts. */
export async function loadParts(): Promise<void> {
  await Promise.all([
    import('../speeds-panel/speeds-panel.ts'),
    import('../suction-panel/suction-panel.ts'),
  ]);
}
