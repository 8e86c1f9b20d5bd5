/**
 * Cloth that a search saves against the best of the four folds by hand, over random classes of a few sizes.
 *
 *     npm run --silent bench:rosters -- --rosters 25 --sizes 1,5,20,60 --seconds 20 --seed 1
 */
import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { randomFrom } from '../engine/src/packing/random.ts';
import { parseClass } from '../engine/src/request/index.ts';
import { planClass, searchClass, type ClassPlan } from '../engine/src/workshop/index.ts';

const { values } = parseArgs({
  options: {
    rosters: { type: 'string', default: '25' },
    sizes: { type: 'string', default: '1,5,20,60' },
    seconds: { type: 'string', default: '20' },
    seed: { type: 'string', default: '1' },
  },
});
const seconds = Number(values.seconds);
const random = randomFrom(Number(values.seed));
const between = (least: number, most: number): number => least + Math.round(random.next() * (most - least));
const oneOf = <T>(all: readonly T[]): T | undefined => all[random.below(all.length)];

/** Bodies from a small child to a large adult, a cut each, all of one bolt. */
function roster(count: number): unknown {
  const skirt = (): object => {
    const waist = between(52, 120);
    const cut = oneOf([
      { kind: 'flared' },
      { kind: 'gathered' },
      { kind: 'gored', gores: 4 },
      { kind: 'gored', gores: 6 },
      { kind: 'tiered' },
      { kind: 'circle' },
    ]);
    return {
      wearer: 'Robin',
      cut,
      body: { waist, hip: waist + between(8, 26), waistToHem: between(45, 92), age: 30 },
    };
  };
  const width = oneOf([112, 137, 150]);
  return {
    units: 'cm',
    cloths: { bolt: { width } },
    skirts: Array.from({ length: count }, skirt),
  };
}

/** Of all cloths what is cut off the bolt before its wash, mm. */
const lengthOf = ({ cloths }: ClassPlan): number =>
  cloths.reduce((sum, { chosen }) => sum + chosen.clothBefore.value, 0);
const fits = ({ cloths }: ClassPlan): boolean => cloths.every(({ chosen }) => chosen.fits);

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.round(share * (sorted.length - 1)))] ?? NaN;
console.log(
  `Node ${process.version}, ${cpus()[0]?.model ?? '?'}, ${values.seconds} s each, seed ${values.seed}\n`,
);
console.log(
  '| skirts | rosters | saved: median % | least | quarter | three quarters | most | no fold by hand fits |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- | --- |');
for (const size of values.sizes.split(',').map(Number)) {
  const saved: number[] = [];
  let without = 0;
  for (let i = 0; i < Number(values.rosters); i++) {
    const parsed = parseClass(roster(size));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
    const byHand = planClass(parsed.request);
    const began = performance.now();
    const found = searchClass(parsed.request, {
      seed: i + 1,
      spent: () => (performance.now() - began) / 1000 / seconds,
    });
    if (!fits(byHand)) without++;
    else saved.push(100 * (1 - lengthOf(found) / lengthOf(byHand)));
  }
  saved.sort((a, b) => a - b);
  const cells = [0.5, 0, 0.25, 0.75, 1].map((share) => quantile(saved, share).toFixed(1));
  console.log(`| ${String(size)} | ${values.rosters} | ${cells.join(' | ')} | ${String(without)} |`);
}
