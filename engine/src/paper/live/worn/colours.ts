import type { Ink } from '../../drawing/index.ts';

const channels = (ink: Ink): readonly number[] =>
  [1, 3, 5].map((start) => parseInt(ink.slice(start, start + 2), 16));

/** A colour on its way to another: 0 the first, 1 the other. */
export function mixed(ink: Ink, other: Ink, share: number): Ink {
  const to = channels(other);
  const parts = channels(ink).map((value, i) => Math.round(value + ((to[i] ?? value) - value) * share));
  return `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

/** Lightness from 0 to 1, by the weights of ITU-R BT.601. */
export function lightness(ink: Ink): number {
  const [red = 0, green = 0, blue = 0] = channels(ink);
  return (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
}

/** An edge that shows against an unbleached page and against the colour itself. */
export const edgeOf = (ink: Ink): Ink =>
  lightness(ink) < 0.25 ? mixed(ink, '#000000', 0.55) : mixed(ink, '#2a221c', 0.34 + 0.16 * lightness(ink));

/** Lines on a colour: darker on a light one, lighter on a dark one. */
export const lineOn = (ink: Ink): Ink =>
  lightness(ink) < 0.3 ? mixed(ink, '#ffffff', 0.36) : mixed(ink, '#1b1512', 0.42);

/** The figure's own quiet colours: nobody's. */
export const quiet = {
  body: '#e3d8c8',
  top: '#d5c9b7',
  hair: '#b9aa96',
  shoe: '#b3a592',
  line: '#9a8d7b',
  floor: '#c3b7a4',
} as const;
