import { distance, point, type Point } from '../../../geometry/index.ts';
import { handlesOf, type HandleName, type SkirtPlan } from '../../../plan/index.ts';
import type { Mm } from '../../../units/index.ts';
import type { PlacedHandle } from '../livePicture.ts';
import { halvesOf, levelPoint, type Sheets } from './sheet.ts';
import { levelAt, sheetWith } from './where.ts';

/** How far apart handles are kept where there is room: 44 px where the drawing, 120 mm wide, fills a small phone. */
const APART = 15;

const UP = point(0, -1);
const DOWN = point(0, 1);
const RIGHT = point(1, 0);

interface Wanted {
  readonly name: HandleName;
  readonly towards: Point;
  readonly perMm: number;
  /** Where it may lie, best first. */
  readonly places: readonly Point[];
}

/** What of the panel can be taken hold of, each where it moves the line that it is named for. */
export function placedHandles(plan: SkirtPlan, sheets: Sheets): PlacedHandle[] {
  const known = new Map(handlesOf(plan).map(({ name, value }) => [name, value]));
  const placed: PlacedHandle[] = [];
  for (const { places, ...handle } of wanted(plan, sheets, known))
    if (known.has(handle.name)) {
      const at = freest(places, placed);
      if (at) placed.push({ ...handle, at });
    }
  return placed;
}

/** The first place that is clear of all that is placed already; else the one that is furthest from it. */
function freest(places: readonly Point[], placed: readonly PlacedHandle[]): Point | null {
  let best: Point | null = null;
  let most = -1;
  for (const place of places) {
    let nearest = Infinity;
    for (const { at } of placed) nearest = Math.min(nearest, distance(at, place));
    if (nearest >= APART) return place;
    if (nearest > most) [best, most] = [place, nearest];
  }
  return best;
}

function wanted(plan: SkirtPlan, sheets: Sheets, known: ReadonlyMap<HandleName, Mm>): Wanted[] {
  const sheet = sheets.main;
  const [first] = sheets.all;
  const { shape, side, at, scale } = sheet;
  const halves = halvesOf(plan);
  const [waist, hem] = [side(1, 0), side(1, shape.length)];
  const along = (y: number, on = sheet): Point[] =>
    spreadAlong((share) => levelPoint(on, y, share), OUTWARDS);
  // A mark may count several panels, and an arc is longer than its reach: the handle's own value over what is drawn of it.
  const mark = (name: HandleName, half: number, end: Point): number =>
    half > 0 ? (known.get(name) ?? half) / Math.max(1e-3, end.x - at(point(0, 0)).x) : 1 / scale;
  const move = { towards: UP, perMm: 1 / scale };
  return [
    { name: 'hemMark', towards: RIGHT, perMm: mark('hemMark', halves.hem, hem), places: [hem] },
    {
      name: 'waistMark',
      towards: RIGHT,
      perMm: mark('waistMark', halves.waist, waist),
      places: [waist],
    },
    { name: 'length', towards: DOWN, perMm: 1 / scale, places: along(shape.length) },
    { name: 'hem', towards: DOWN, perMm: 1 / scale, places: along(shape.length + shape.hemAllowance) },
    { name: 'casing', ...move, places: along(-first.shape.topAllowance, first) },
    ...rowHandles(plan, sheets),
  ];
}

/** Shares of an edge from its left end: from the middle outwards; rows from the left, gaps from the middle. */
const OUTWARDS = [0.5, 0.38, 0.62, 0.26, 0.74];
const FROM_LEFT = [0.1, 0.2, 0.3, 0.15, 0.25, 0.36, 0.06];
const MIDDLE = [0.5, 0.62, 0.74, 0.56, 0.68, 0.44, 0.8];

const spreadAlong = (of: (share: number) => Point, shares: readonly number[]): Point[] => shares.map(of);

function rowHandles({ ribbons, skirt }: SkirtPlan, sheets: Sheets): Wanted[] {
  const bands = new Set<number>();
  return ribbons.rows.flatMap((row): Wanted[] => {
    const first = !bands.has(row.band);
    bands.add(row.band);
    if (!first) return [];
    const { fromHem, width, gapBelow } = row;
    const own = sheetWith(row, sheets);
    const level = (at: number, shares: readonly number[]): Point[] => {
      const { sheet, y } = levelAt(skirt, sheets, at);
      // Unlike panels have one length: a row that only others carry lies on them at the same level.
      const on = sheets.tiers ? sheet : (own ?? sheet);
      return spreadAlong((share) => levelPoint(on, y, share), shares);
    };
    const move = { towards: UP, perMm: 1 / sheets.main.scale };
    return [
      { name: `row ${row.number}`, ...move, places: level(fromHem.value + width.value / 2, FROM_LEFT) },
      ...(gapBelow
        ? [
            {
              name: `gap ${row.number}` as const,
              ...move,
              places: level(fromHem.value - gapBelow.value / 2, MIDDLE),
            },
          ]
        : []),
    ];
  });
}
