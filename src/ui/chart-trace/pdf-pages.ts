// The pages of a PDF as pictures. The file is read in a worker that asks nobody for anything: fonts that
// the file does not hold are the reader's own, and what would take a program besides is left out.

import { getDocument, type PDFDocumentProxy, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beginScript } from '../script-address.ts';
import { drawnImage, LONGEST_SIDE } from './drawn-image.ts';
import type { ChartImage } from './chart-image.ts';
// oxlint-disable-next-line import/default -- with these words behind it, Vite gives its address
import address from './pdf.worker.ts?worker&url';

/** An open file. */
export interface PdfPages {
  readonly count: number;
  /** A page as a picture; pages count from 1. @throws Error where it can't be drawn */
  readonly draw: (page: number) => Promise<ChartImage>;
  readonly close: () => void;
}

/** How opening one ended. */
export type OpenedPdf =
  | { readonly kind: 'pages'; readonly pages: PdfPages; readonly first: ChartImage }
  | { readonly kind: 'locked' }
  | { readonly kind: 'broken' }
  | { readonly kind: 'too many'; readonly count: number };

/** A file of more pages is no leaflet. */
export const MOST_PAGES = 1000;
/** Opening a file and drawing a page each end after this [ms]. */
const LONGEST_WAIT = 30_000;
/** A picture inside a page of more is left out: 100 million [px]. */
const MOST_PIXELS = 1e8;
/** A small page is drawn this many times its size at most [px for a point]. */
const LARGEST_SCALE = 8;

/**
 * Opens a PDF.
 *
 * @param file - what was chosen
 * @returns its pages with a picture of the first, or why there are none
 * @throws Error where its worker can't be begun
 */
export async function openPdf(file: File): Promise<OpenedPdf> {
  const port = beginScript(address, 'pdf');
  const worker = PDFWorker.create({ port });
  const task = getDocument({
    worker,
    data: new Uint8Array(await file.arrayBuffer()),
    isEvalSupported: false,
    useWasm: false,
    useWorkerFetch: false,
    useSystemFonts: true,
    maxImageSize: MOST_PIXELS,
    verbosity: 0,
  });
  const close = () => {
    void task.destroy().catch(() => {});
    worker.destroy();
    port.terminate();
  };
  const failure = new Promise<never>((_, reject) => {
    port.addEventListener('error', (event) => {
      event.preventDefault();
      reject(new Error('the worker broke down'));
    });
  });
  // It may break down while nobody waits for it.
  failure.catch(() => {});
  const inTime = <T>(work: Promise<T>) => Promise.race([work, failure, lateness()]);
  try {
    const pdf = await inTime(task.promise);
    const count = pdf.numPages;
    if (count > MOST_PAGES) {
      close();
      return { kind: 'too many', count };
    }
    const draw = (page: number) => inTime(drawn(pdf, page));
    return { kind: 'pages', pages: { count, draw, close }, first: await draw(1) };
  } catch (error) {
    close();
    const isLocked = error instanceof Error && error.name === 'PasswordException';
    return { kind: isLocked ? 'locked' : 'broken' };
  }
}

async function drawn(pdf: PDFDocumentProxy, number: number): Promise<ChartImage> {
  const page = await pdf.getPage(number);
  const size = page.getViewport({ scale: 1 });
  const scale = Math.min(LARGEST_SCALE, LONGEST_SIDE / Math.max(size.width, size.height));
  const viewport = page.getViewport({ scale });
  const [width, height] = [viewport.width, viewport.height].map((side) =>
    Math.max(1, Math.round(side)),
  ) as [number, number];
  const image = await drawnImage(
    width,
    height,
    (canvas) => page.render({ canvas, viewport }).promise,
  );
  page.cleanup();
  return { ...image, page: number };
}

function lateness(): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new Error('it took too long')), LONGEST_WAIT);
  });
}
