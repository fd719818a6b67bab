/** The longest side of a photo as kept, px, and its largest size, bytes. */
const LONGEST = 1280;
const LARGEST = 100_000;

export interface Shrunk {
  readonly width: number;
  readonly height: number;
  /** JPEG, base64. */
  readonly data: string;
}

/**
 * A photo reduced to at most 100 kB, first in quality, then in size. The camera's metadata (place,
 * time, make) is removed. Undefined if it is not a picture.
 */
export async function shrinkPhoto(file: Blob): Promise<Shrunk | undefined> {
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (!picture) return undefined;
  try {
    return shrunk(picture);
  } finally {
    // Unpacked, a photo of 12 megapixels takes 48 MB until it is collected.
    picture.close();
  }
}

function shrunk(picture: ImageBitmap): Shrunk | undefined {
  let side = Math.min(LONGEST, Math.max(picture.width, picture.height));
  // A small photo keeps its size.
  do {
    const scale = side / Math.max(picture.width, picture.height);
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    for (const quality of [0.8, 0.65, 0.5]) {
      const [, data = ''] = canvas.toDataURL('image/jpeg', quality).split(',');
      if (data.length * 0.75 <= LARGEST)
        return { width: canvas.width, height: canvas.height, data };
    }
    side = Math.round(side * 0.75);
  } while (side >= 160);
  return undefined;
}
