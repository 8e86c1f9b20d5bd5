/** A colour as the eye tells lightness (0 black to 100 white), red from green, and yellow from blue: CIE 1976 L*a*b*. */
export interface Lab {
  readonly lightness: number;
  readonly a: number;
  readonly b: number;
}

/** White of daylight D65, by which screens are made. */
const WHITE = { x: 0.95047, y: 1, z: 1.08883 };

/** Linear light of one channel of sRGB, 0 to 1 (IEC 61966-2-1). */
const linear = (channel: number): number => {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};

/** Cube root, with the straight piece near black that the CIE gives it. */
const root = (share: number): number =>
  share > (6 / 29) ** 3 ? Math.cbrt(share) : share / (3 * (6 / 29) ** 2) + 4 / 29;

/** Of a colour that is written `#rrggbb`. */
export function labOf(hex: string): Lab {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => linear(parseInt(hex.slice(at, at + 2), 16)));
  const x = root((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / WHITE.x);
  const y = root((0.2126729 * r + 0.7151522 * g + 0.072175 * b) / WHITE.y);
  const z = root((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / WHITE.z);
  return { lightness: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}
