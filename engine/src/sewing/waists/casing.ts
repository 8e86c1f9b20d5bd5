import { mm } from '../../units/index.ts';
import { step, straightStitch, type Bench } from '../bench.ts';
import { figure } from '../codes.ts';
import { hangsByPoints } from '../extras/lining.ts';
import { isLevel } from '../marks/index.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { hands, paces, together } from '../time.ts';
import { countOf, edgesOf, joinedAs, lengthOf, named } from '../works.ts';

/** Opening left to thread the elastic: about 1 to 2 in in published tutorials. */
const THREADING_OPENING = mm(50);
const threadingOpening = () => figure.length(THREADING_OPENING, 'sewing.threadingOpening');

/** The top edge turned down along its fold. A cord comes out by holes that are there before; elastic goes in by a gap. */
export function turnedCasing(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, cloth, options } = bench;
  const { waist } = skirt;
  const straight = skirt.hang.shape === 'straight';
  const works = named(waist.works, 'casing');
  const depth = figure.length(waist.depth, 'sewing.casingStitching', { casing: waist.topAllowance });
  const opening = threadingOpening();
  const holes = holeSteps(bench, after);
  return [
    ...holes,
    step({
      id: 'casing',
      after: holes.length > 0 ? ['cordEyelets'] : after,
      station: 'machine',
      sentences: [
        say('casing.turn', { casing: waist.topAllowance, depth }),
        cloth.chosen.kind === 'double fold' && straight && say('casing.selvage'),
        (!straight || !isLevel(bench)) && say('casing.curve'),
        skirt.extras.lining !== null && !hangsByPoints(bench) && say('casing.lining'),
        waist.cord
          ? say('casing.stitchClosed', { depth })
          : say(joinedAs(bench) === 'sides' ? 'casing.stitch' : 'casing.stitchSeam', { depth, opening }),
      ],
      cautions: ['hotIron', 'needle', 'pins'],
      stitch: straightStitch,
      works,
      hands: hands(options.skill, paces.casing, 0, lengthOf(works)),
    }),
  ];
}

/** Each hole this far from the centre front. Common practice, no source. */
const ASIDE = mm(12);

function holeSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { waist } = bench.skirt;
  const works = named(waist.works, 'cord eyelet');
  if (!waist.cord || works.length === 0) return [];
  const down = figure.length(mm(waist.depth / 2), 'sewing.eyeletDown');
  return [
    step({
      id: 'cordEyelets',
      after,
      station: 'machine',
      sentences: [
        say('cordEyelets.mark', {
          holes: countOf(works),
          aside: figure.length(ASIDE, 'sewing.eyeletAside'),
          down,
        }),
        say('cordEyelets.stiffen'),
        say('cordEyelets.sew', { width: waist.cord.width }),
      ],
      cautions: ['needle', 'shears', 'hotIron'],
      works,
      hands: hands(bench.options.skill, paces.eyelet, countOf(works), lengthOf(works)),
    }),
  ];
}

/** A strip sewn to the top and folded over it. */
export function stripCasing(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, options } = bench;
  const works = named(skirt.waist.works, 'casing join', 'casing seam', 'casing');
  return [
    step({
      id: 'casingStrip',
      after,
      station: 'machine',
      sentences: [
        say('casingStrip.join', { joins: countOf(named(works, 'casing join')) }),
        say('casingStrip.pin'),
        say('casingStrip.sew', { seam: skirt.waist.topAllowance }),
        say('casingStrip.fold', { height: skirt.waist.above }),
        say('casingStrip.stitch', { opening: threadingOpening() }),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works,
      hands: together(
        hands(options.skill, paces.casingStrip, 0, lengthOf(works)),
        hands(options.skill, paces.edge, 0, edgesOf(bench, works)),
      ),
    }),
  ];
}
