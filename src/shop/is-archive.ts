// Tells an archive of many shops from the file of one, before either is read.

/** The `format` of an archive. */
export const ARCHIVE_FORMAT = 'dropcurve-shops';

/**
 * Whether a text is meant to be an archive.
 *
 * @param text - of a file
 * @returns whether it begins like one
 */
export function isArchive(text: string): boolean {
  return text.slice(0, 200).includes(`"${ARCHIVE_FORMAT}"`);
}
