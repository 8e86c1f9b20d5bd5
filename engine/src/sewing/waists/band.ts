import { step, straightStitch, zigzagStitch, type Bench } from '../bench.ts';
import { say, type Sentence } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { inFront } from '../tiers.ts';
import { hands, paces } from '../time.ts';
import { countOf, lengthOf, named, panelWorks } from '../works.ts';

/** Ties are made before the band: its ends hold them. */
export function tieSteps(bench: Bench): Step[] {
  const own = panelWorks(bench);
  const ties = named(own, 'tie');
  if (ties.length === 0) return [];
  const works = [...ties, ...named(own, 'strip join')];
  return [
    step({
      id: 'ties',
      after: ['cut', 'testStitch'],
      station: 'machine',
      sentences: [
        say('ties.make', { ties: countOf(ties) }),
        bench.skirt.waist.build !== 'band' && say('ties.corner'),
      ],
      cautions: ['needle', 'hotIron'],
      stitch: straightStitch,
      works,
      hands: hands(bench.options.skill, paces.ties, countOf(works), lengthOf(works)),
    }),
  ];
}

/** A band that does not stretch in front, or at all: stiffened, joined and pressed before it is sewn on. */
export function bandSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, options } = bench;
  const { waist } = skirt;
  const front = inFront(bench);
  const ring = front ? named(waist.works, 'band ends') : [];
  const joins = named(waist.works, 'strip join');
  // Two of a ring's joins are its side seams.
  const joined = front ? countOf(ring) - 2 : countOf(joins);
  const sewn = named(waist.works, 'band seam', 'band fold', ...(front ? [] : (['band ends'] as const)));
  const ties = named(panelWorks(bench), 'tie').length > 0;
  const ways: readonly (Sentence | false)[] = front
    ? [
        say('band.pinSides'),
        waist.takenUp?.by === 'gathers' && say('band.drawFront'),
        say('band.sew', { seam: waist.topAllowance }),
        say('band.foldBack', { height: waist.above }),
      ]
    : [
        waist.closure
          ? say('band.pin', { overlap: waist.closure.overlap })
          : skirt.overlap
            ? say('band.pinWrap')
            : say('band.quarters'),
        waist.takenUp?.by === 'gathers' && say('band.draw'),
        say('band.sew', { seam: waist.topAllowance }),
        ties && say('band.ties'),
        say('band.ends'),
        say('band.fold', { height: waist.above }),
        waist.elastic === null && say('band.tryOn', { length: skirt.finishedLength }),
      ];
  return [
    step({
      id: 'bandPrepare',
      after: ['cut', 'testStitch'],
      station: 'machine',
      sentences: [
        joined > 0 && say('bandPrepare.join', { joins: joined }),
        say(front ? 'bandPrepare.stiffenFront' : 'bandPrepare.stiffen'),
        front && say('bandPrepare.ring'),
        say('bandPrepare.press'),
        say('bandPrepare.mark'),
      ],
      cautions: ['hotIron', 'needle'],
      stitch: straightStitch,
      works: [...joins, ...ring],
      hands: hands(options.skill, paces.stiffen, countOf([...joins, ...ring]), lengthOf([...joins, ...ring])),
    }),
    step({
      id: 'band',
      after: [...after, 'bandPrepare'],
      station: 'machine',
      sentences: ways,
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works: sewn,
      hands: hands(options.skill, paces.band, 0, lengthOf(sewn)),
    }),
  ];
}

/** A doubled ring of knit, stretched as it is sewn. */
export function stretchBandSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, options } = bench;
  const { waist } = skirt;
  const works = named(waist.works, 'band ends', 'band seam');
  const gathered = named(waist.works, 'gathering rows').length > 0;
  return [
    step({
      id: 'band',
      after,
      station: 'machine',
      sentences: [
        say('band.ring', { joins: countOf(named(works, 'band ends')) }),
        say('band.doubled', { height: waist.above }),
        say('band.quarters'),
        gathered && say('band.drawStretched'),
        say('band.stretch', { seam: waist.topAllowance }),
        say('band.tryOn', { length: skirt.finishedLength }),
      ],
      cautions: ['needle', 'pins'],
      stitch: zigzagStitch,
      works,
      hands: hands(options.skill, paces.band, 0, lengthOf(works)),
    }),
  ];
}
