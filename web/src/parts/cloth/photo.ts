/** Longest side of a kept photo: enough to fill a drawing, small enough to keep many. */
const LONGEST_SIDE = 512;

/** A photo no larger than drawings need. Rejects where the browser can't read it as a picture. */
export async function smallPhoto(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(picture.width * scale)),
    Math.max(1, Math.round(picture.height * scale)),
  );
  contextOf(canvas).drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
}

/** Pixels along each side of what the mean is taken of: the browser has already averaged what it scales down. */
const SAMPLE = 48;

/** The mean of all of a photo's colours, as `#rrggbb`. */
export async function meanColour(photo: Blob): Promise<string> {
  const picture = await createImageBitmap(photo);
  const context = contextOf(new OffscreenCanvas(SAMPLE, SAMPLE));
  context.drawImage(picture, 0, 0, SAMPLE, SAMPLE);
  picture.close();
  return meanOf(context.getImageData(0, 0, SAMPLE, SAMPLE).data);
}

/** The mean of pixels given as red, green, blue and opacity in turn. */
export function meanOf(pixels: ArrayLike<number>): string {
  const mean = [0, 1, 2].map((channel) => {
    let sum = 0;
    for (let i = channel; i < pixels.length; i += 4) sum += pixels[i] ?? 0;
    return Math.round((sum * 4) / pixels.length);
  });
  return `#${mean.map((each) => each.toString(16).padStart(2, '0')).join('')}`;
}

function contextOf(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no drawing surface');
  return context;
}
