// Makes a picture of a file that somebody chose: of one size that all places on it refer to, upright,
// and without whatever else the file holds. It stays in this browser and is kept nowhere.

/** A picture to trace from. */
export interface ChartImage {
  /** Address of the picture within this page; give it back with `URL.revokeObjectURL`. */
  readonly url: string;
  /** [px] */
  readonly width: number;
  readonly height: number;
}

/** How opening a picture ended. */
export type OpenedPicture =
  | { readonly kind: 'open'; readonly image: ChartImage }
  | { readonly kind: 'refused'; readonly words: string };

const KINDS = ['image/png', 'image/jpeg', 'image/webp'];
/** What the chooser of files offers. */
export const ACCEPTED = KINDS.join(',');
/** Larger files are no chart [bytes]. */
const LARGEST_FILE = 50_000_000;
/** Pictures of more are refused before they fill the memory: 100 million [px]. */
const MOST_PIXELS = 1e8;
/** A longer side is made as short as this [px]. */
const LONGEST_SIDE = 3000;

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
  if (file.type === 'application/pdf') {
    return refused(
      `${name} is a PDF. Take a picture of its page on your screen and paste that here.`,
    );
  }
  if (!KINDS.includes(file.type)) {
    const kind = file.type === '' ? 'a file of unknown kind' : file.type;
    return refused(`${name} is ${kind}. Choose a PNG, JPEG or WebP picture.`);
  }
  try {
    const { width, height } = await sizeOf(file);
    if (width * height > MOST_PIXELS) {
      return refused(
        `${name} has ${width} × ${height} pixels, and at most 100 million can be opened. Cut the chart out of it, or make it smaller.`,
      );
    }
    return { kind: 'open', image: await drawn(await createImageBitmap(file)) };
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

async function drawn(bitmap: ImageBitmap): Promise<ChartImage> {
  const scale = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * scale));
  const height = Math.max(1, Math.round(bitmap.height * scale));
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('there is no canvas to draw on');
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const url = URL.createObjectURL(await canvas.convertToBlob());
  return { url, width, height };
}

function refused(words: string): OpenedPicture {
  return { kind: 'refused', words };
}
