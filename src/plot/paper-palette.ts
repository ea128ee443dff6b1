// The colours of a picture that leaves the page: ink on white paper, whatever the screen's theme is.
// They are those of the printed page, so that a saved picture and a print look alike.

/** Custom properties of the page and their values on paper. */
export const paperPalette: Readonly<Record<string, string>> = {
  '--dc-paper': '#fff',
  '--dc-ink': '#000',
  '--dc-ink-soft': '#444',
  '--dc-rule': '#ccc',
  '--dc-rule-strong': '#777',
  '--dc-range': '#e6e6e6',
  '--dc-blade': '#ddd',
  '--dc-air': '#0b4a86',
  '--dc-air-wash': '#d5e4f2',
  '--dc-duct': '#7d3f05',
};
