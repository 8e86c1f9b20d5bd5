import { grown } from './grow.ts';
import type { Outline, PackingItem, Placement } from './job.ts';
import { boxOf, hullOf, tidied, twiceArea, type Box } from './polygon.ts';
import { turned } from './turn.ts';

/** One item in one stance, in whole units, its origin at 0. */
export interface Shape {
  readonly item: number;
  readonly rotation: number;
  readonly mirrored: boolean;
  /** As its neighbours see it: grown by half the spacing. */
  readonly outline: Outline;
  readonly body: Box;
  /** As the strip's edges see it. */
  readonly box: Box;
  readonly area: number;
  readonly hullArea: number;
}

/** Units to the caller's unit: a power of ten, so that figures with few decimals stay as they are. */
const FINEST = 4e6;
export const scaleFor = (width: number): number => {
  let scale = 1;
  while (width * scale * 10 <= FINEST) scale *= 10;
  while (width * scale > FINEST) scale /= 10;
  return scale;
};

export const scaled = (outline: Outline, scale: number): Outline =>
  outline.map(({ x, y }) => ({ x: Math.round(x * scale), y: Math.round(y * scale) }));

/** An outline in whole units about its own lower left, and where that stands: far along a strip it is as exact as near. */
export function aboutItself(
  outline: Outline,
  scale: number,
): { readonly outline: Outline; readonly x: number; readonly y: number } {
  const whole = scaled(outline, scale);
  const { left, low } = boxOf(whole);
  return { outline: whole.map(({ x, y }) => ({ x: x - left, y: y - low })), x: left, y: low };
}

/** Turns tried of a piece that may lie at any: more would only make the search slower. */
const ANY_TURNS = 24;

/** The turns of an item that are tried, each once. */
export const rotationsOf = ({ rotations }: PackingItem): readonly number[] =>
  rotations === 'any'
    ? Array.from({ length: ANY_TURNS }, (_, i) => (i * 360) / ANY_TURNS)
    : [...new Set(rotations.map((each) => ((each % 360) + 360) % 360))];

export function shapeOf(
  { outline }: PackingItem,
  { item, rotation, mirrored }: Pick<Placement, 'item' | 'rotation' | 'mirrored'>,
  scale: number,
  spacing: number,
): Shape {
  const stood = tidied(
    scaled(
      outline.map((corner) => turned(corner, rotation, mirrored)),
      scale,
    ),
  );
  const seen = tidied(grown(stood, spacing / 2));
  return {
    item,
    rotation,
    mirrored,
    outline: seen,
    body: boxOf(seen),
    box: boxOf(stood),
    area: twiceArea(stood) / 2,
    hullArea: twiceArea(hullOf(stood)) / 2,
  };
}

/** Whether two stances of one item cover the same cloth, wherever their origins are. */
export function isSameStance(a: Shape, b: Shape): boolean {
  if (a.outline.length !== b.outline.length) return false;
  const from = ({ outline, body }: Shape): string[] =>
    outline.map(({ x, y }) => `${String(x - body.left)} ${String(y - body.low)}`).toSorted();
  const other = from(b);
  return from(a).every((corner, i) => corner === other[i]);
}
