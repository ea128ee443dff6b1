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
  /** What is written under the drawing, for want of the page around it. */
  readonly caption?: string | undefined;
}

/** Paper kept around the drawing [px]. */
const PICTURE_MARGIN = 16;
const CAPTION = { size: 12, line: 16 };
/** Mean width of a character over the font size, on the wide side [-]. */
const WIDTH_OVER_SIZE = 0.6;

/**
 * Writes the file.
 *
 * @param drawing - the content, with the attributes that all of it inherits
 * @param frame - its size [px] and title
 * @returns the text of the file
 */
export function pictureText(
  drawing: PictureNode,
  { width, height, title, caption = '' }: PictureFrame,
): string {
  const lines = captionLines(caption, width);
  const wide = width + 2 * PICTURE_MARGIN;
  const high = height + 2 * PICTURE_MARGIN + lines.length * CAPTION.line;
  const view = `${-PICTURE_MARGIN} ${-PICTURE_MARGIN} ${wide} ${high}`;
  const paper = `<rect x="${-PICTURE_MARGIN}" y="${-PICTURE_MARGIN}" width="${wide}" height="${high}" fill="#fff"/>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="${view}" role="img">`,
    `<title>${escaped(title)}</title>`,
    paper,
    written(drawing),
    ...lines.map((line, i) => captionText(drawing, line, height + (i + 1) * CAPTION.line)),
    '</svg>',
    '',
  ].join('\n');
}

function captionText({ attributes }: PictureNode, line: string, y: number): string {
  const family = attributes['font-family'] ?? 'sans-serif';
  const style = { 'font-family': family, 'font-size': String(CAPTION.size), fill: '#444' };
  const place = { x: '0', y: String(y) };
  return written({ name: 'text', attributes: { ...place, ...style }, children: [line] });
}

/** As many words to a line as the drawing is wide. */
function captionLines(caption: string, width: number): string[] {
  const most = Math.max(1, Math.floor(width / (WIDTH_OVER_SIZE * CAPTION.size)));
  const lines: string[] = [];
  for (const word of caption.split(' ').filter((each) => each !== '')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && longer.length <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
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
