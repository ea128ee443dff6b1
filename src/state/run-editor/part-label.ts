// What a section is called where it stands by itself, in a list or over a form.

import type { Section } from '../../shop/schema/section-schema.ts';

/**
 * A section's label: its name with a capital, or its id where it has none.
 *
 * @param section - id and name of a section
 * @returns 'Main by the planer', or 'Section main-2'
 */
export function partLabel({ id, name }: Pick<Section, 'id' | 'name'>): string {
  if (name === undefined) return `Section ${id}`;
  return name.charAt(0).toUpperCase() + name.slice(1);
}
