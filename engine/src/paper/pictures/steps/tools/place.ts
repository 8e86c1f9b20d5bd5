import { mm, radians } from '../../../../units/index.ts';
import { group, type GroupMark, type Mark } from '../../../drawing/index.ts';

/** Where a tool lies: the point it works at, and which way it looks (0 to the right, then clockwise), in degrees. */
export interface Lies {
  readonly x: number;
  readonly y: number;
  readonly turn?: number;
  readonly scale?: number;
}

export const lying = (name: string, marks: readonly Mark[], { x, y, turn = 0, scale = 1 }: Lies): GroupMark =>
  group(name, marks, {
    placement: { dx: mm(x), dy: mm(y), angle: radians((turn * Math.PI) / 180), scale },
  });
