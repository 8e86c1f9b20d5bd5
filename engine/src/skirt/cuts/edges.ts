import { offsetOutline, type Path } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { PanelEdge } from '../panel.ts';

/** A panel between its top line and its hem line, raw side to raw side; the four edges run clockwise. */
export interface BetweenFolds {
  readonly waist: Path;
  readonly right: Path;
  readonly hem: Path;
  readonly left: Path;
}

/** Cloth beyond one finished edge, and whether it is turned along it or sewn in a seam. */
export interface Beyond {
  readonly depth: Mm;
  readonly turned: boolean;
}

export interface Allowances {
  readonly top: Beyond;
  readonly hem: Beyond;
  readonly left: Beyond;
  readonly right: Beyond;
}

export const sewn = (depth: Mm): Beyond => ({ depth, turned: false });
export const turned = (depth: Mm): Beyond => ({ depth, turned: true });

/** The finished edges: top and hem lie on their lines, sides their allowance inside the raw side. */
export function finishedEdges(raw: BetweenFolds, { top, hem, left, right }: Allowances): PanelEdge[] {
  const paths = offsetOutline([
    { path: raw.waist, distance: mm(0) },
    { path: raw.right, distance: mm(-right.depth) },
    { path: raw.hem, distance: mm(0) },
    { path: raw.left, distance: mm(-left.depth) },
  ]);
  const edge = (name: PanelEdge['name'], i: number, beyond: Beyond): PanelEdge => ({
    name,
    finished: paths[i] ?? [],
    allowance: beyond.depth,
    turned: beyond.turned,
  });
  return [edge('waist', 0, top), edge('right', 1, right), edge('hem', 2, hem), edge('left', 3, left)];
}
