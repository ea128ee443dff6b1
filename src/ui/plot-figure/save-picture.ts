// Saves a plot's picture as a file: the SVG text itself, or a PNG drawn from it at twice its size.

import { pictureText } from '../../plot/picture-text.ts';
import { pictureOf } from './picture-of.ts';

/** Dots in the PNG for each pixel of the page. */
const DENSITY = 2;

export type PictureKind = 'svg' | 'png';

/**
 * Saves the picture.
 *
 * @param picture - the SVG element of a plot
 * @param kind - of file
 * @param name - of the file, without its ending
 */
export async function savePicture(
  picture: SVGSVGElement,
  kind: PictureKind,
  name: string,
): Promise<void> {
  const { width, height } = sizeOf(picture);
  const title = picture.getAttribute('aria-label') ?? name;
  const caption = picture.dataset['caption'];
  const text = pictureText(pictureOf(picture), { width, height, title, caption });
  const drawing = new Blob([text], { type: 'image/svg+xml' });
  save(kind === 'svg' ? drawing : await asPng(drawing), `${name}.${kind}`);
}

/** In the pixels that it was laid out for, at whatever size it is shown. */
function sizeOf(picture: SVGSVGElement): { readonly width: number; readonly height: number } {
  return picture.hasAttribute('viewBox')
    ? picture.viewBox.baseVal
    : picture.getBoundingClientRect();
}

async function asPng(drawing: Blob): Promise<Blob> {
  const address = URL.createObjectURL(drawing);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(DENSITY * image.naturalWidth);
    canvas.height = Math.round(DENSITY * image.naturalHeight);
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('no PNG'))), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

function save(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
