// Makes a picture of a file that somebody chose: of one size that all places on it refer to, upright,
// and without whatever else the file holds. Of a PDF, each page is one. It stays in this browser and is
// kept nowhere.

import type { ChartImage } from './chart-image.ts';
import { drawnImage, LONGEST_SIDE } from './drawn-image.ts';
import type { PdfPages } from './pdf-pages.ts';

/** How opening a picture ended. */
export type OpenedPicture =
  | { readonly kind: 'open'; readonly image: ChartImage; readonly pages: PdfPages | undefined }
  | { readonly kind: 'refused'; readonly words: string };

const KINDS = ['image/png', 'image/jpeg', 'image/webp'];
const PDF = 'application/pdf';
/** What the chooser of files offers. */
export const ACCEPTED = [...KINDS, PDF].join(',');
/** Larger files are no chart [bytes]. */
const LARGEST_FILE = 50_000_000;
/** Pictures of more are refused before they fill the memory: 100 million [px]. */
const MOST_PIXELS = 1e8;

/**
 * Opens a picture.
 *
 * @param file - what was chosen, dropped or pasted
 * @returns the picture, or why it can't be one
 */
export async function openPicture(file: File): Promise<OpenedPicture> {
  const name = file.name === '' ? 'The picture' : `“${file.name}”`;
  if (file.size > LARGEST_FILE) {
    const size = Math.round(file.size / 1e6);
    return refused(`${name} has ${size} MB; at most 50 MB can be opened. Cut the chart out of it.`);
  }
  if (file.type === PDF) return openFirstPage(file, name);
  if (!KINDS.includes(file.type)) {
    const kind = file.type === '' ? 'a file of unknown kind' : file.type;
    return refused(`${name} is ${kind}. Choose a PNG, JPEG or WebP picture, or a PDF.`);
  }
  try {
    const { width, height } = await sizeOf(file);
    if (width * height > MOST_PIXELS) {
      return refused(
        `${name} has ${width} × ${height} pixels, and at most 100 million can be opened. Cut the chart out of it, or make it smaller.`,
      );
    }
    return { kind: 'open', image: await drawn(file), pages: undefined };
  } catch {
    return refused(
      `${name} can’t be read as a picture. Open it elsewhere, save it as PNG, and choose that.`,
    );
  }
}

/** From the beginning of the file, before all of it is decoded. */
async function sizeOf(file: File): Promise<{ readonly width: number; readonly height: number }> {
  const image = new Image();
  const url = URL.createObjectURL(file);
  try {
    await new Promise((resolve, reject) => {
      image.addEventListener('load', resolve, { once: true });
      image.addEventListener('error', reject, { once: true });
      image.src = url;
    });
    return { width: image.naturalWidth, height: image.naturalHeight };
  } finally {
    URL.revokeObjectURL(url);
  }
}

async function drawn(file: File): Promise<ChartImage> {
  const bitmap = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * scale));
  const height = Math.max(1, Math.round(bitmap.height * scale));
  return drawnImage(width, height, (canvas) => {
    canvas.getContext('2d')!.drawImage(bitmap, 0, 0, width, height);
    bitmap.close();
  });
}

/** What reads a PDF is loaded when there is one. */
async function openFirstPage(file: File, name: string): Promise<OpenedPicture> {
  const instead = 'take a picture of the page with the chart, and paste that here';
  try {
    const { openPdf, MOST_PAGES } = await import('./pdf-pages.ts');
    const opened = await openPdf(file);
    switch (opened.kind) {
      case 'pages':
        return { kind: 'open', image: opened.first, pages: opened.pages };
      case 'broken':
        return refused(`${name} can’t be read as a PDF. Open it elsewhere, ${instead}.`);
      case 'locked':
        return refused(`${name} is locked with a password. Open it elsewhere, ${instead}.`);
      case 'too many':
        return refused(
          `${name} has ${opened.count} pages; at most ${MOST_PAGES} can be opened. Print the page with the chart to a file of its own.`,
        );
      default:
        return opened satisfies never;
    }
  } catch {
    return refused(
      `What reads a PDF could not be loaded. Open ${name} elsewhere, ${instead}; or load this page anew.`,
    );
  }
}

function refused(words: string): OpenedPicture {
  return { kind: 'refused', words };
}
