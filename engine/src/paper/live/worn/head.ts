import type { Path } from '../../../geometry/index.ts';
import { mm } from '../../../units/index.ts';
import { area, type Ink, type Mark } from '../../drawing/index.ts';
import { quiet } from './colours.ts';
import { mirrored } from './smooth.ts';
import type { Stance } from './stance.ts';

export const washed = (path: Path | readonly Path[], fill: Ink): Mark =>
  area(path, { fill, stroke: quiet.line, width: mm(0.22) });

/** Nobody's face, nobody's hair. */
export function head({ crown, chin }: Stance, side: 'front' | 'back'): Mark[] {
  const tall = chin - crown;
  const half = 0.37 * tall;
  const face = mirrored([
    [0, crown],
    [0.62 * half, crown + 0.09 * tall],
    [half, crown + 0.36 * tall],
    [0.9 * half, crown + 0.66 * tall],
    [0.52 * half, crown + 0.92 * tall],
    [0.16 * half, chin],
  ]);
  const hair = mirrored([
    [0, crown - 0.035 * tall],
    [0.7 * half, crown + 0.05 * tall],
    [1.1 * half, crown + 0.36 * tall],
    [1.04 * half, crown + 0.64 * tall],
    ...(side === 'front'
      ? ([
          [0.92 * half, crown + 0.56 * tall],
          [0.8 * half, crown + 0.36 * tall],
          [0.4 * half, crown + 0.24 * tall],
        ] as const)
      : ([[0.78 * half, crown + 0.88 * tall]] as const)),
    [0.08 * half, crown + (side === 'front' ? 0.17 : 0.97) * tall],
  ]);
  return side === 'front' ? [washed(face, quiet.body), washed(hair, quiet.hair)] : [washed(hair, quiet.hair)];
}
