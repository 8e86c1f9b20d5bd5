import type { Lab } from './lab.ts';

const FAR = 25 ** 7;
const degrees = (turn: number): number => (turn * Math.PI) / 180;
/** An angle in degrees, 0 to 360. */
const hueOf = (a: number, b: number): number =>
  a === 0 && b === 0 ? 0 : ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;

/**
 * How unlike two colours look: CIEDE2000 (CIE 142-2001, ISO/CIE 11664-6), all weights 1. 1 is about what an eye tells apart side
 * by side. Named as there: C chroma, h hue, S the weights, R the turn among the blues.
 */
export function colourDifference(one: Lab, other: Lab): number {
  const meanC = (Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2;
  const stretch = 1.5 - 0.5 * Math.sqrt(meanC ** 7 / (meanC ** 7 + FAR));
  const [a1, a2] = [one.a * stretch, other.a * stretch];
  const [c1, c2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const [h1, h2] = [hueOf(a1, one.b), hueOf(a2, other.b)];
  const isGrey = c1 * c2 === 0;
  const apart = h2 - h1;
  const turn = isGrey ? 0 : apart > 180 ? apart - 360 : apart < -180 ? apart + 360 : apart;
  const hue = isGrey
    ? h1 + h2
    : Math.abs(apart) <= 180
      ? (h1 + h2) / 2
      : (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2;
  const lightness = (one.lightness + other.lightness) / 2;
  const chroma = (c1 + c2) / 2;
  const t =
    1 -
    0.17 * Math.cos(degrees(hue - 30)) +
    0.24 * Math.cos(degrees(2 * hue)) +
    0.32 * Math.cos(degrees(3 * hue + 6)) -
    0.2 * Math.cos(degrees(4 * hue - 63));
  const middle = (lightness - 50) ** 2;
  const dL = (other.lightness - one.lightness) / (1 + (0.015 * middle) / Math.sqrt(20 + middle));
  const dC = (c2 - c1) / (1 + 0.045 * chroma);
  const dH = (2 * Math.sqrt(c1 * c2) * Math.sin(degrees(turn / 2))) / (1 + 0.015 * chroma * t);
  const blue = 60 * Math.exp(-(((hue - 275) / 25) ** 2));
  const turned = -Math.sin(degrees(blue)) * 2 * Math.sqrt(chroma ** 7 / (chroma ** 7 + FAR));
  return Math.sqrt(dL ** 2 + dC ** 2 + dH ** 2 + turned * dC * dH);
}
