import { mirrorX, point, polyline, type Path } from '../../geometry/index.ts';
import type { Marking, Panel, PanelName, Panels, Part, Skirt } from '../../skirt/index.ts';
import { planOf } from '../../testing/requests.ts';
import { mm } from '../../units/index.ts';

const { skirt } = planOf({ cut: { kind: 'gathered', widths: 2 } });
const [base] = skirt.panels;

const closed = (corners: readonly (readonly [number, number])[]): Path =>
  polyline(
    corners.map(([x, y]) => point(x, y)),
    { closed: true },
  );

/** A piece as wide at top and hem as told, its middle at 0. */
export const trapezoid = (top: number, hem: number, depth: number): Path =>
  closed([
    [-top / 2, 0],
    [top / 2, 0],
    [hem / 2, depth],
    [-hem / 2, depth],
  ]);

/** The right front of a wrap: its edge straight, its side flared, its inner corner cut away. */
const wrapFront = closed([
  [-220, 0],
  [220, 0],
  [300, 800],
  [-220, 800],
]);

export const panelOf = (name: PanelName, number: number, cut: Path, symmetric = true): Panel => ({
  ...base,
  name,
  number,
  shape: { ...base.shape, cut, symmetric },
});

export const partOf = (name: Part['name'], count: number, cut: Path, changes: Partial<Part> = {}): Part => ({
  name,
  count,
  cloth: 'skirt',
  shape: { ...base.shape, cut, symmetric: changes.mirrored !== true },
  grain: 'either',
  mirrored: false,
  measures: [],
  ...changes,
});

/** A skirt of these panels and parts, as far as the cloth asks. */
export const skirtOf = (marking: Marking, panels: Panels, parts: readonly Part[] = []): Skirt => ({
  ...skirt,
  marking,
  panels,
  parts,
});

const gores = (count: number, top: number, hem: number): Panels => {
  const gore = (number: number): Panel => panelOf('gore', number, trapezoid(top, hem, 820));
  return [gore(1), ...Array.from({ length: count - 1 }, (_, i) => gore(i + 2))];
};

const waistband = partOf('waistband', 1, trapezoid(820, 820, 90));
/** A bag with a straight side and a round one: it has a left and a right. */
const bag = closed([
  [-80, 0],
  [60, 0],
  [100, 120],
  [100, 240],
  [40, 300],
  [-80, 300],
]);
const bags = partOf('pocket bag', 4, bag, { mirrored: true, grain: 'down' });

/** Skirts of unlike pieces, before any cut gives them. */
export const unlike = {
  'ten gores': skirtOf('by piece', gores(10, 110, 300), [waistband]),
  'six gores and a wide front': skirtOf(
    'by piece',
    [
      panelOf('front gore', 1, trapezoid(300, 620, 820)),
      panelOf('back gore', 1, trapezoid(200, 480, 820)),
      ...[1, 2, 3, 4].map((number) => panelOf('side gore', number, trapezoid(140, 380, 820))),
    ],
    [waistband, bags],
  ),
  'a wrap': skirtOf(
    'by piece',
    [
      panelOf('back', 1, trapezoid(520, 660, 800)),
      panelOf('left front', 1, mirrorX(wrapFront), false),
      panelOf('right front', 1, wrapFront, false),
    ],
    [waistband, partOf('tie', 2, trapezoid(900, 900, 80)), bags],
  ),
  'two left fronts': skirtOf('by piece', [
    panelOf('back', 1, trapezoid(520, 660, 800)),
    panelOf('left front', 1, wrapFront, false),
    panelOf('left front', 2, wrapFront, false),
  ]),
  'a band longer than the cloth is wide': skirtOf('straight widths', skirt.panels, [
    partOf('waistband', 1, trapezoid(mm(1600), mm(1600), 90)),
  ]),
} as const;
