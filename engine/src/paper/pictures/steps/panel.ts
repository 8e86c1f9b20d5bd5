import { endOf, point, startOf, type Path, type Point } from '../../../geometry/index.ts';
import type { Row } from '../../../ribbon/index.ts';
import type { PanelShape } from '../../../skirt/index.ts';
import { mm } from '../../../units/index.ts';
import { dot, stroke, type Mark } from '../../drawing/index.ts';
import { chalkLine, foldLine } from '../cloth.ts';
import { fitInto, type Box, type Fitted } from './fitted.ts';
import type { Scene } from './picture.ts';
import { cloth, type Face } from './surface.ts';

export const shapeOf = ({ plan }: Scene): PanelShape => plan.skirt.panels[0].shape;

interface OpenPanel {
  readonly fitted: Fitted;
  readonly marks: readonly Mark[];
}

/** One panel opened out, trimmed, with the folds of its casing and hem. */
export function openPanel(scene: Scene, face: Face, room: Box, shape = shapeOf(scene)): OpenPanel {
  const fitted = fitInto(shape.trimmed, room);
  const folds = shape.edges
    .filter(({ turned }) => turned)
    .map(({ finished }) => stroke(fitted.path(finished), { ...foldLine, width: mm(0.2) }));
  return { fitted, marks: [...cloth(face, fitted.path(shape.trimmed)), ...folds] };
}

interface FlatRows {
  readonly rows: readonly Row[];
  readonly shape: PanelShape;
  /** Panels in that round. */
  readonly count: number;
}

/** Rows that are chalked on flat panels, of the lowest round that has any, and a panel of that round. */
export function flatRows({ plan }: Scene): FlatRows {
  const flat = plan.ribbons.rows.filter(({ onSeam }) => onSeam === null);
  const [lowest] = flat;
  return {
    // Each row's chalk line is that on the first panel that carries it.
    rows: flat.filter((row) => row.round === lowest?.round),
    shape: (lowest?.lines[0]?.panel ?? plan.skirt.panels[0]).shape,
    count: (plan.skirt.rounds[(lowest?.round ?? 1) - 1] ?? plan.skirt.rounds[0]).panels.length,
  };
}

export const chalkLines = (rows: readonly Row[], { path }: Fitted): Mark[] =>
  rows
    .filter(({ lower }) => lower.length > 0)
    .map(({ lower }) => stroke(path(lower), { ...chalkLine, width: mm(0.3) }));

/** Both ends and the middle of a row's chalk line. */
export function rowDots(lower: Path): Point[] {
  const [first, last] = [lower[0], lower.at(-1)];
  if (!first || !last) return [];
  const ends = [startOf(first), endOf(last)];
  const middle = lower.length === 1 ? middleOf(lower) : [];
  return [...ends, ...middle];
}

function middleOf([segment]: Path): Point[] {
  if (!segment) return [];
  if (segment.kind === 'line') return [point((segment.from.x + segment.to.x) / 2, segment.from.y)];
  const angle = segment.start + segment.sweep / 2;
  return [
    point(
      segment.centre.x + segment.radius * Math.cos(angle),
      segment.centre.y + segment.radius * Math.sin(angle),
    ),
  ];
}

export const dots = (points: readonly Point[], { at }: Fitted): Mark[] =>
  points.map((each) => dot(at(each), mm(0.55)));
