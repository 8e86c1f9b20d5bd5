import { offsetOutline, type Path } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelEdge } from '../panel.ts';

/** A panel between its two folds, raw side to raw side; the four edges run clockwise. */
export interface BetweenFolds {
  readonly waist: Path;
  readonly right: Path;
  readonly hem: Path;
  readonly left: Path;
}

export interface Allowances {
  readonly topAllowance: Mm;
  readonly hemAllowance: Mm;
  readonly sideSeam: Mm;
}

/** The finished edges: turned edges lie on their folds, seams their allowance inside the raw side. */
export function finishedEdges(
  raw: BetweenFolds,
  { topAllowance, hemAllowance, sideSeam }: Allowances,
): PanelEdge[] {
  const inside = mm(-sideSeam);
  const [waist = [], right = [], hem = [], left = []] = offsetOutline([
    { path: raw.waist, distance: mm(0) },
    { path: raw.right, distance: inside },
    { path: raw.hem, distance: mm(0) },
    { path: raw.left, distance: inside },
  ]);
  return [
    { name: 'waist', finished: waist, allowance: topAllowance, turned: true },
    { name: 'right', finished: right, allowance: sideSeam, turned: false },
    { name: 'hem', finished: hem, allowance: hemAllowance, turned: true },
    { name: 'left', finished: left, allowance: sideSeam, turned: false },
  ];
}
