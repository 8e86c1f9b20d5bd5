import type { Notice } from '../../figure/index.ts';
import { noMeetings, type Effort, type Packing, type Placement } from '../../packing/index.ts';
import { caution, problem } from '../codes.ts';
import type { Cutting } from '../blocks.ts';
import type { LayKind } from '../options.ts';
import { assembled, isBetter, nothing } from '../job/assembled.ts';
import type { Known } from './known.ts';
import type { ClothEffort } from './effort.ts';
import type { ClothJob, FoundCloth, FoundTable } from '../job/found.ts';
import { handStart, type HandPlaced } from './handStart.ts';
import { looseOn } from './loose.ts';
import { ableOf, foldingOf, runOf } from './folding.ts';
import { packLots, placedOf } from './lots.ts';
import { seamMeets } from './meets.ts';
import { boundOf } from '../job/bound.ts';
import { aboutPrint } from '../job/print.ts';
import { liesOnItsSide } from './lies.ts';
import { countsOf, seamParams } from './names.ts';
import { pooled } from './pooled.ts';
import { pressed } from './pressed.ts';
import { isSameRun, placementsOf, type Run } from './run.ts';
import { partOf, shared } from './shares.ts';
import type { Strip } from './strip.ts';
import { looseOpened } from './looseOpened.ts';
import { beyond, tablesOf } from './tables.ts';
import { onItsSide } from './variants.ts';

/** Part of the effort that goes to seeing which variant is the most promising, each. */
const TRIAL = 0.1;
/** Part that goes to what is folded, where pieces are cut in a single layer besides. */
const FOLDED = 0.85;

/** Part that goes to pressing together what lies on lengths at hand. */
const PRESSED = 0.05;

/** What is cut in a single layer, with the folded tables; what of it is too large, and what finds no cloth. */
interface Loose {
  readonly tables: readonly FoundTable[];
  readonly unfit?: readonly Cutting[];
  readonly lacking?: readonly Cutting[];
}

/**
 * The best lay that the packing finds on the cloth laid so: short runs of every variant, then a long one of the most
 * promising. `offer` is told of each better one.
 */
export function packed(
  known: Known,
  way: LayKind,
  effort: ClothEffort,
  offer: (found: FoundCloth) => void,
): FoundCloth {
  const { job, hand } = known;
  const { fabric } = job;
  const meets = fabric.pattern?.match === true;
  const folding = foldingOf(job, way);
  if (!folding) return assembled(known, nothing([problem('cloth.matchInOneLayer')]));
  const { foldOn, strip } = folding;
  const runs: Run[] = [...folding.runs];
  const started = way === 'open' && hand ? startOf(hand, job, strip) : null;
  if (started) {
    const variant = { lying: started.map(({ lying }) => lying), loose: [] };
    const asByHand = runOf(variant, job, way, folding, started);
    const alike = runs.findIndex((each) => isSameRun(each, asByHand));
    if (alike >= 0) runs.splice(alike, 1, asByHand);
    else runs.unshift(asByHand);
  }
  if ((fabric.oneWay || meets) && way === 'open' && runs.every(({ unfit }) => unfit.length > 0))
    runs.push(runOf(onItsSide(job), job, way, folding));
  const able = ableOf(runs);
  let evaluations = 0;
  const meetings = noMeetings();
  const bounds = new Map<Run, number>();
  /** A lay of the packed pieces, and of what is cut in a single layer besides. */
  const laid = (
    { lots, unfit, apart }: Run,
    packing: Packing,
    loose: (tables: FoundTable[]) => Loose,
  ): FoundCloth => {
    const placed = placedOf(lots, packing.placements);
    const { tables, unfit: wide = [], lacking = [] } = loose(tablesOf(placed, strip, way, fabric));
    const missing = [...beyond(placed, strip).map(({ lying }) => lying.cutting), ...lacking];
    return assembled(known, {
      tables,
      bound: boundOf(
        job,
        way,
        able.map((each) => bounds.get(each) ?? 0),
      ),
      evaluations: evaluations + packing.evaluations,
      notices: [
        ...tooLarge([...unfit, ...wide], job, way),
        // Of what does not fit some seams are nowhere.
        ...(unfit.length + wide.length + missing.length === 0 ? offAt(tables, job) : []),
        ...aboutPrint(fabric, way, fabric.oneWay && tables.some(({ pieces }) => pieces.some(liesOnItsSide))),
        ...(apart.length > 0 ? [caution('cloth.apart', { wearers: apart.join(', '), lay: way })] : []),
        ...countsOf(missing).map((params) => problem('cloth.notEnoughAtHand', params)),
      ],
    });
  };
  const convert = (each: Run, packing: Packing): FoundCloth =>
    laid(each, packing, (tables) => {
      const { loose } = each.variant;
      const bolt = job.lengths.find(({ length }) => length === null);
      return bolt
        ? looseOn(loose, tables, way, bolt, fabric)
        : { tables, lacking: loose.map(({ cutting }) => cutting) };
    });
  /** The same, single pieces sought on the cloth opened out. */
  const concluded = (each: Run, packing: Packing): FoundCloth => {
    const built = convert(each, packing);
    const { loose } = each.variant;
    if (loose.length === 0) return built;
    const folded = tablesOf(placedOf(each.lots, packing.placements), strip, way, fabric);
    const opened = looseOpened(loose, folded, job, partOf(effort, FOLDED, 1));
    const sought = opened && laid(each, packing, () => opened);
    return sought && isBetter(sought, built) ? sought : built;
  };
  const attempt = (
    each: Run,
    start: readonly Placement[] | null,
    share: Pick<Effort, 'evaluations' | 'spent'>,
  ): Packing | null => {
    let enough = false;
    let told = Infinity;
    const result = packLots(
      each.lots,
      strip,
      fabric,
      {
        ...share,
        seed: effort.seed,
        ...(share.spent || share.evaluations !== undefined
          ? { spent: () => (enough ? 1 : (share.spent?.() ?? 0)) }
          : {}),
        better(packing) {
          bounds.set(each, packing.lowerBound);
          // A hair's gain in a long lay is told with the next one: reading a lay off the strip takes its time.
          if (strip.lengths.length === 1 && packing.length > told * (1 - WORTH_TELLING)) return;
          told = packing.length;
          const found = convert(each, packing);
          // Where what is at hand is enough there is nothing to save.
          enough = found.fits && found.toBuy.value === 0;
          offer(found);
        },
      },
      { start, meetings },
    );
    return result.ok ? result.packing : null;
  };
  const hasLoose = able.some(({ variant }) => variant.loose.length > 0);
  const hasLengths = strip.lengths.some(({ from }) => from.length !== null);
  const seeking = hasLengths ? { ...effort, ...partOf(effort, 0, 1 - PRESSED) } : effort;
  const shares = shared(hasLoose ? partOf(seeking, 0, FOLDED) : seeking, able.length, TRIAL);
  const tried = able.flatMap((each, i) => {
    const share = shares.trial(i);
    // Its time may be over before it begins: of many pieces a first answer alone takes a while.
    if (i > 0 && (share.spent?.() ?? 0) >= 1) return [];
    const start = each.start && placementsOf(each.lots, each.start);
    const packing = attempt(each, start, share);
    if (!packing) return [];
    bounds.set(each, packing.lowerBound);
    evaluations += packing.evaluations;
    return [{ run: each, packing }];
  });
  const [first] = tried;
  const best = tried.reduce<typeof first>((most, each) => {
    if (!most) return each;
    const [one, other] = [convert(each.run, each.packing), convert(most.run, most.packing)];
    return isBetter(one, other) ? each : most;
  }, first);
  if (!best) {
    const all = (able[0]?.lots ?? []).flatMap(({ members }) => members.map(({ cutting }) => cutting));
    const why = meets
      ? [problem('cloth.cantMatch')]
      : countsOf(all).map((params) => problem('cloth.notEnoughAtHand', params));
    return assembled(known, nothing(why));
  }
  const found = (packing: Packing): FoundCloth => {
    const so = effort.spent?.() ?? 0;
    const { lots } = best.run;
    const placements = hasLengths
      ? pressed(
          packing.placements,
          { lots, strip, known, foldOn, meetings },
          partOf(effort, so, so + PRESSED),
        )
      : packing.placements;
    return concluded(best.run, { ...packing, placements, evaluations: 0 });
  };
  const soFar = convert(best.run, { ...best.packing, evaluations: 0 });
  if (soFar.proven) return hasLengths ? found(best.packing) : soFar;
  if (able.length === 1) return found(best.packing);
  const further = attempt(best.run, best.packing.placements, shares.rest(evaluations));
  if (!further) return found(best.packing);
  bounds.set(best.run, further.lowerBound);
  evaluations += further.evaluations;
  return found(further);
}

/** Laid by hand, skirt after skirt or all at once: what takes less. */
function startOf(
  hand: NonNullable<Known['hand']>,
  job: ClothJob,
  strip: Strip,
): readonly HandPlaced[] | null {
  const together = pooled(job, strip);
  const inTurn = hand.reduce((sum, { lay }) => sum + lay.clothAfter.value, 0);
  return together && together.along < inTurn ? together.placed : handStart(hand, job, strip);
}

/** Share of the length. */
const WORTH_TELLING = 0.0005;

/** Seams at which a pattern that has to meet does not: read off the lay. */
function offAt(tables: FoundCloth['tables'], { fabric, wanted }: ClothJob): Notice[] {
  if (fabric.pattern?.match !== true) return [];
  const meets = new Set(
    seamMeets({ tables, fabric }, wanted)
      .filter((each) => each.meets)
      .map(({ seam }) => seam),
  );
  return wanted
    .flatMap(({ wearer, seams }) =>
      seams.filter((seam) => !meets.has(seam)).map((seam) => seamParams(wearer, seam)),
    )
    .map((params) => caution('cloth.seamNotMatched', params));
}

/** What is too large for the cloth; or only to lie between its selvage and a fold that is on the pattern. */
function tooLarge(cuttings: readonly Cutting[], { fabric }: ClothJob, way: LayKind): Notice[] {
  const { pattern, usable } = fabric;
  const pieces = [...new Set(cuttings.map(({ cut }) => cut.piece))];
  const isTooLarge = ({ width, depth }: (typeof pieces)[number]): boolean =>
    way !== 'lengthwise fold' || pattern?.match !== true || Math.min(width.value, depth.value) > usable.value;
  const large = pieces.filter(isTooLarge);
  return [
    ...large.map(({ width, depth }) => problem('cloth.pieceTooLarge', { width, depth, usable })),
    ...(large.length < pieces.length ? [problem('cloth.matchInOneLayer')] : []),
  ];
}
