import { execFileSync, spawnSync } from 'node:child_process';

/** Poppler, a PDF reader that shares no code with the writer. Where tests must be complete its absence is a failure. */
export const withoutPoppler = spawnSync('pdfinfo', ['-v']).error !== undefined && !process.env['CI'];

/** What a poppler tool prints about a PDF. */
export const poppler = (tool: string, args: readonly string[], pdf: Uint8Array): string =>
  execFileSync(tool, args, { input: pdf, maxBuffer: 1 << 28 }).toString('utf8');

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** 0 bare paper to 1 full ink. */
  readonly inkAt: (x: number, y: number) => number;
}

/** The first page as grey dots, ten to the millimetre. */
export function printed(pdf: Uint8Array): Picture {
  const bytes = execFileSync('pdftoppm', ['-r', '254', '-gray', '-f', '1', '-l', '1', '-'], {
    input: pdf,
    maxBuffer: 1 << 28,
  });
  const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('Not a portable grey map');
  const [width, height, most] = [Number(head[1]), Number(head[2]), Number(head[3])];
  const start = head[0].length;
  return { width, height, inkAt: (x, y) => 1 - (bytes[start + y * width + x] ?? most) / most };
}
