import type { Corner } from './job.ts';

/**
 * Sine of x radians, |x| ≤ π/4, by its series: sums and products only, so that every machine rounds alike
 * (a language's own sine may differ in its last digit from one engine to the next).
 */
function smallSine(x: number): number {
  let term = x;
  let sum = x;
  for (let k = 1; k < 12; k++) {
    term *= (-x * x) / (2 * k * (2 * k + 1));
    sum += term;
  }
  return sum;
}

function smallCosine(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 12; k++) {
    term *= (-x * x) / ((2 * k - 1) * (2 * k));
    sum += term;
  }
  return sum;
}

const PI = 3.141592653589793;

/** Cosine and sine of a whole number of degrees; quarter turns are exact. */
export function turnOf(degrees: number): { readonly cos: number; readonly sin: number } {
  const turn = ((degrees % 360) + 360) % 360;
  const quarter = Math.round(turn / 90) % 4;
  const rest = ((turn - 90 * Math.round(turn / 90)) * PI) / 180;
  const cos = smallCosine(rest);
  const sin = smallSine(rest);
  if (quarter === 0) return { cos, sin };
  if (quarter === 1) return { cos: -sin, sin: cos };
  if (quarter === 2) return { cos: -cos, sin: -sin };
  return { cos: sin, sin: -cos };
}

/** A corner mirrored in the y axis where asked, then turned counter-clockwise about the origin. */
export function turned({ x, y }: Corner, degrees: number, mirrored: boolean): Corner {
  const { cos, sin } = turnOf(degrees);
  const from = mirrored ? -x : x;
  return { x: from * cos - y * sin, y: from * sin + y * cos };
}
