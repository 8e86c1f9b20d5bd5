import { point, type Point } from '../../../geometry/index.ts';
import { handlesOf, type HandleName, type SkirtPlan } from '../../../plan/index.ts';
import type { Mm } from '../../../units/index.ts';
import { freest } from '../freest.ts';
import type { PlacedHandle } from '../livePicture.ts';
import { optionHandles, OUTWARDS, tierHandles } from './optionHandles.ts';
import { onLevel, type Place, type Wanted } from './place.ts';
import { halvesOf, type Sheets } from './sheet.ts';
import { levelAt, sheetWith } from './where.ts';

const RIGHT = point(1, 0);

/** What of the panel can be taken hold of, each where it moves the line that it is named for. */
export function placedHandles(plan: SkirtPlan, sheets: Sheets): PlacedHandle[] {
  const known = new Map(handlesOf(plan).map(({ name, value }) => [name, value]));
  const placed: PlacedHandle[] = [];
  for (const { name, places } of wanted(plan, sheets, known)) {
    const place = known.has(name) ? freest(places, placed) : null;
    if (place) placed.push({ name, ...place });
  }
  return placed;
}

/** First what has one place only, then what can make way for it. */
function wanted(plan: SkirtPlan, sheets: Sheets, known: ReadonlyMap<HandleName, Mm>): Wanted[] {
  const { shape, side, at, scale } = sheets.main;
  const halves = halvesOf(plan);
  // A mark may count several panels, and an arc is longer than its reach: the handle's own value over what is drawn of it.
  const mark = (name: HandleName, half: number, end: Point): Wanted => {
    const perMm =
      half > 0 ? (known.get(name) ?? half) / Math.max(1e-3, end.x - at(point(0, 0)).x) : 1 / scale;
    return { name, places: [{ at: end, towards: RIGHT, perMm }] };
  };
  return [
    mark('hemMark', halves.hem, side(1, shape.length)),
    mark('waistMark', halves.waist, side(1, 0)),
    { name: 'length', places: onLevel(sheets.main, shape.length, OUTWARDS, 'down') },
    { name: 'hem', places: onLevel(sheets.main, shape.length + shape.hemAllowance, OUTWARDS, 'down') },
    ...optionHandles(plan, sheets),
    ...tierHandles(plan, sheets),
    ...rowHandles(plan, sheets),
  ];
}

/** Shares of a level from its left end: rows from the left, gaps from the middle. */
const FROM_LEFT = [0.1, 0.2, 0.3, 0.15, 0.25, 0.36, 0.06];
const MIDDLE = [0.5, 0.62, 0.74, 0.56, 0.68, 0.44, 0.8];
/** Of tiers, whose names stand above their middle. */
const BESIDE_NAME = [0.72, 0.62, 0.28, 0.78, 0.4, 0.5];

function rowHandles({ ribbons, skirt }: SkirtPlan, sheets: Sheets): Wanted[] {
  const bands = new Set<number>();
  return ribbons.rows.flatMap((row): Wanted[] => {
    const first = !bands.has(row.band);
    bands.add(row.band);
    if (!first) return [];
    const { fromHem, width, gapBelow } = row;
    const own = sheetWith(row, sheets);
    const level = (at: number, shares: readonly number[]): Place[] => {
      const { sheet, y } = levelAt(skirt, sheets, at);
      // Unlike panels have one length: a row that only others carry lies on them at the same level.
      return onLevel(sheets.tiers ? sheet : (own ?? sheet), y, shares, 'up');
    };
    const inGap = fromHem.value - (gapBelow?.value ?? 0) / 2;
    // Panels side by side have every gap: where the first is crowded, another has room.
    const others = sheets.tiers ? [] : sheets.all.filter((sheet) => sheet !== own);
    const gaps = [
      ...level(inGap, sheets.tiers ? BESIDE_NAME : MIDDLE),
      ...others.flatMap((sheet) => onLevel(sheet, levelAt(skirt, sheets, inGap).y, MIDDLE, 'up')),
    ];
    return [
      { name: `row ${row.number}`, places: level(fromHem.value + width.value / 2, FROM_LEFT) },
      ...(gapBelow ? [{ name: `gap ${row.number}` as const, places: gaps }] : []),
    ];
  });
}
