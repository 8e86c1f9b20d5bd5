import type { SkirtPlan } from '../plan/index.ts';
import { endlessIn } from './endlessIn.ts';

/** Under a thousandth of a millimetre nothing is measured. */
const SLACK = 1e-3;

/** What holds of any plan of any request, each broken one told in words; none is none. */
export function broken(plan: SkirtPlan): string[] {
  const { skirt, ribbons, cloth, supplies, lines, sewing } = plan;
  const faults: string[] = [];
  const must = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  faults.push(...endlessIn(plan));

  must(skirt.opening.value > 0, 'there is no opening');
  must(skirt.hemRound.value >= skirt.opening.value - SLACK, 'the hem is narrower than the top');
  must(skirt.marks.hemQuarter.value >= skirt.marks.waistQuarter.value - SLACK, 'the skirt narrows downwards');
  must(
    skirt.marks.cutLength.value + skirt.waist.above.value >= skirt.finishedLength.value - SLACK,
    'panel and waist are shorter than the skirt',
  );

  let under = 0;
  for (const row of ribbons.rows) {
    must(row.fromHem.value >= under - SLACK, `row ${String(row.number)} lies on the one below`);
    under = row.fromHem.value + row.width.value;
    must(under <= skirt.finishedLength.value, `row ${String(row.number)} lies above the skirt`);
    must(row.lower.length > 0 && row.strips.length > 0, `row ${String(row.number)} is nowhere`);
    for (const { length } of row.strips) must(length.value > 0, `row ${String(row.number)} has no length`);
  }

  must(cloth.lays.length === 4 && cloth.lays.includes(cloth.chosen), 'a lay is missing');
  must(
    cloth.chosen.fits || cloth.lays.every(({ fits }) => !fits),
    'a lay that does not fit was taken before one that does',
  );
  for (const lay of cloth.lays) {
    must(lay.clothAfter.value > 0, `${lay.kind}: no cloth`);
    must(lay.clothBefore.value >= lay.clothAfter.value - SLACK, `${lay.kind}: cloth grew in the wash`);
    const isCovered = lay.from ? lay.toBuy.value === 0 : lay.toBuy.value >= lay.clothBefore.value - SLACK;
    must(isCovered, `${lay.kind}: too little is bought, or what is at hand`);
  }
  for (const line of lines) must(line.length.value > 0, `${line.name}: nothing to sew`);
  const atHand = new Set<unknown>(
    [cloth, ...plan.contrast.map((each) => each.cloth)]
      .filter(({ chosen }) => chosen.from)
      .map(({ chosen }) => chosen.toBuy),
  );
  for (const { what, need, buy, price } of supplies.items) {
    const isAtHand = what === 'cloth' && atHand.has(buy);
    must(buy.value > 0 || isAtHand, `${what}: nothing is bought`);
    must(
      need === null || isAtHand || what.includes('thread') || buy.value >= need.value - SLACK,
      `${what}: too little is bought`,
    );
    must(price === null || Number.isInteger(price.minor), `${what}: a part of a cent`);
  }
  must(sewing.hands.value > 0 && sewing.wait.value >= 0, 'no time at all');
  return faults;
}
