// What a section is called in a sentence.

import type { Section } from './schema/section-schema.ts';

/**
 * A section's name to begin a sentence with. A name that starts with a small letter is a noun such
 * as 'main by the door' and takes the article; any other name stands as it is.
 *
 * @param section - id and name of a section
 * @returns 'The main by the door', 'Ast Süd' or 'Section main-2'
 */
export function sectionLabel(section: Pick<Section, 'id' | 'name'>): string {
  const { id, name } = section;
  if (name === undefined) return `Section ${id}`;
  return /^[a-z]/.test(name) ? `The ${name}` : name;
}

/**
 * A section's name inside a sentence.
 *
 * @param section - id and name of a section
 * @returns 'the main by the door', 'Ast Süd' or 'section main-2'
 */
export function sectionLabelInside(section: Pick<Section, 'id' | 'name'>): string {
  const { id, name } = section;
  if (name === undefined) return `section ${id}`;
  return /^[a-z]/.test(name) ? `the ${name}` : name;
}
