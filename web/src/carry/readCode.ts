/** The browser's own reader, where it has one; TypeScript does not know it yet. */
interface OwnReader {
  detect(picture: ImageBitmap): Promise<readonly { readonly rawValue: string }[]>;
}
type OwnReaderMaker = new (options: { readonly formats: readonly string[] }) => OwnReader;

/**
 * Longest sides in pixels a picture is searched at; a code that is blurred or striped at one may be clear at the next.
 * Smaller pictures are enlarged: modules of three pixels and a half, as screenshots have, are else misjudged.
 */
const SIDES = [1600, 800];

/** The text of the QR code in a photo; null where none is found or the file is no picture. Browser only. */
export async function readCode(picture: Blob): Promise<string | null> {
  const bitmap = await createImageBitmap(picture).catch(() => null);
  if (!bitmap) return null;
  try {
    return (await byBrowser(bitmap)) ?? (await byLibrary(bitmap));
  } finally {
    bitmap.close();
  }
}

async function byBrowser(bitmap: ImageBitmap): Promise<string | null> {
  const { BarcodeDetector } = globalThis as { readonly BarcodeDetector?: OwnReaderMaker };
  if (!BarcodeDetector) return null;
  try {
    const [found] = await new BarcodeDetector({ formats: ['qr_code'] }).detect(bitmap);
    return found?.rawValue ?? null;
  } catch {
    // Some browsers have the name but not the system's service behind it.
    return null;
  }
}

async function byLibrary(bitmap: ImageBitmap): Promise<string | null> {
  const { default: read } = await import('jsqr');
  for (const side of SIDES) {
    const pixels = pixelsOf(bitmap, side / Math.max(bitmap.width, bitmap.height));
    const text = pixels && read(pixels.data, pixels.width, pixels.height)?.data;
    if (text) return text;
  }
  return null;
}

function pixelsOf(bitmap: ImageBitmap, scale: number): ImageData | null {
  const width = Math.max(1, Math.round(bitmap.width * scale));
  const height = Math.max(1, Math.round(bitmap.height * scale));
  const context = new OffscreenCanvas(width, height).getContext('2d');
  if (!context) return null;
  context.fillStyle = '#ffffff';
  // A picture without a ground of its own would be read as black on black.
  context.fillRect(0, 0, width, height);
  context.drawImage(bitmap, 0, 0, width, height);
  return context.getImageData(0, 0, width, height);
}
