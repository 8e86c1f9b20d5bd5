import type { Row } from '../../ribbon/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { SkirtPlan } from '../plan.ts';
import { bandAlone, gapAlone } from './byHand.ts';
import { fittedHighest, fittedLowest } from './fitted.ts';
import { hold, stepDown, stepUp, type BandMove, type Hold } from './hold.ts';
import { placedBands, topOf, type PlacedBands } from './placed.ts';
import { clearTop } from './room.ts';

/** Every row, by its chalk line, and every gap between bands. */
export function rowHolds(plan: SkirtPlan): Hold[] {
  const placed = placedBands(plan);
  const moves = placed.lower.map((_, band) => bandMove(plan, placed, band));
  return plan.ribbons.rows.flatMap((row, i) => {
    const move = moves[row.band - 1];
    if (!move) return [];
    const opensBand = row.band > 1 && plan.ribbons.rows[i - 1]?.band !== row.band;
    return [rowHold(plan, placed, row, move), ...(opensBand ? [gapHold(plan, placed, row)] : [])];
  });
}

function bandMove(plan: SkirtPlan, placed: PlacedBands, band: number): BandMove {
  const { spacing } = plan.request.ribbons;
  if (spacing === 'by hand') return bandAlone(plan, placed, band);
  if (band === 0) return fittedLowest(plan, placed);
  return band === placed.heights.length - 1 ? fittedHighest(plan, placed) : bandAlone(plan, placed, band);
}

/** A row within a band takes the whole band with it. */
function rowHold(plan: SkirtPlan, { lower }: PlacedBands, row: Row, move: BandMove): Hold {
  const value = row.fromHem.value;
  const inBand = value - (lower[row.band - 1] ?? value);
  return hold({
    name: `row ${row.number}`,
    value,
    least: move.least + inBand,
    most: move.most + inBand,
    step: plan.request.mark,
    from: mm(inBand),
    changes: (to) => move.changes(mm(to - inBand)),
  });
}

/** The gap below a band: all above it goes up or down with it, as far as the casing lets. */
function gapHold(plan: SkirtPlan, placed: PlacedBands, row: Row): Hold {
  const { mark } = plan.request;
  const value: Mm = row.gapBelow?.value ?? mm(0);
  const clear = row.fromHem.value - value;
  const least = mm(stepUp(clear, mark) - clear);
  return hold({
    name: `gap ${row.number}`,
    value,
    least,
    most: value + stepDown(clearTop(plan) - topOf(placed), mark),
    step: mark,
    from: least,
    changes: (to) => gapAlone(plan, placed, row.band - 2, to),
  });
}
