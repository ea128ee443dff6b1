// Writes a plot as the text of an SVG file that stands by itself: white paper, every colour and font
// said as an attribute, no style sheet, nothing fetched.

/** An element of the picture. */
export interface PictureNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (PictureNode | string)[];
}

/** Size of the drawing, and what it is called. */
export interface PictureFrame {
  /** [px] */
  readonly width: number;
  /** [px] */
  readonly height: number;
  /** What the picture says, in a sentence. */
  readonly title: string;
}

/** Paper kept around the drawing [px]. */
const PICTURE_MARGIN = 16;

/**
 * Writes the file.
 *
 * @param drawing - the content, with the attributes that all of it inherits
 * @param frame - its size [px] and title
 * @returns the text of the file
 */
export function pictureText(drawing: PictureNode, { width, height, title }: PictureFrame): string {
  const wide = width + 2 * PICTURE_MARGIN;
  const high = height + 2 * PICTURE_MARGIN;
  const view = `${-PICTURE_MARGIN} ${-PICTURE_MARGIN} ${wide} ${high}`;
  const paper = `<rect x="${-PICTURE_MARGIN}" y="${-PICTURE_MARGIN}" width="${wide}" height="${high}" fill="#fff"/>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="${view}" role="img">`,
    `<title>${escaped(title)}</title>`,
    paper,
    written(drawing),
    '</svg>',
    '',
  ].join('\n');
}

function written(node: PictureNode | string): string {
  if (typeof node === 'string') return escaped(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const content = node.children.map(written).join('');
  return content === ''
    ? `<${node.name}${attributes}/>`
    : `<${node.name}${attributes}>${content}</${node.name}>`;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
