import { step, straightStitch, zigzagStitch, type Bench } from '../bench.ts';
import { inFront } from '../tiers.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { hands, paces } from '../time.ts';
import { countOf, joinedAs, named, panelWorks } from '../works.ts';

/** Elastic through its tunnel, tried on with the hem pinned before anything is closed. */
export function elasticSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, options } = bench;
  const { elastic, works: all } = skirt.waist;
  if (!elastic) return [];
  const back = inFront(bench);
  const works = named(all, 'elastic join', 'elastic catch');
  const seams = countOf(named(works, 'elastic catch'));
  const even = joinedAs(bench) === 'sides' ? 'closeElastic.even' : 'closeElastic.evenQuarters';
  return [
    step({
      id: 'threadElastic',
      after,
      station: 'table',
      sentences: [
        say('threadElastic.cut', { cut: elastic.cut, width: elastic.width }),
        say(back ? 'threadElastic.back' : 'threadElastic.thread'),
        !back && say('threadElastic.pin'),
        say('threadElastic.tryOn', { length: skirt.finishedLength }),
      ],
      cautions: ['pins'],
      hands: hands(options.skill, paces.threadElastic),
    }),
    step({
      id: 'closeElastic',
      after: ['threadElastic'],
      station: 'machine',
      sentences: back
        ? [say('closeElastic.evenBack'), say('closeElastic.sides'), say('closeElastic.gaps')]
        : [
            say(even),
            say('closeElastic.join'),
            say('closeElastic.opening'),
            seams > 0 && say('closeElastic.catch', { seams }),
          ],
      cautions: ['needle'],
      stitch: zigzagStitch,
      works,
      hands: hands(options.skill, paces.closeElastic),
    }),
  ];
}

/** A cord by its two holes; on a child's skirt it is held at the back. */
export function cordSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { skirt, options } = bench;
  const { cord, works: all, notices } = skirt.waist;
  if (!cord) return [];
  const works = named(all, 'cord catch');
  const ofChild = works.length > 0 || notices.some(({ code }) => code === 'waist.cordForChild');
  return [
    step({
      id: 'threadCord',
      after,
      station: works.length > 0 ? 'machine' : 'table',
      sentences: [
        say('threadCord.cut', { cut: cord.cut, width: cord.width }),
        say('threadCord.thread'),
        works.length > 0 && say('threadCord.catch'),
        say('threadCord.ends', { free: cord.freeEnd }),
        say('threadCord.tryOn', { length: skirt.finishedLength }),
      ],
      cautions: ['pins', works.length > 0 && 'needle', ofChild && 'cord'],
      ...(works.length > 0 ? { stitch: straightStitch } : {}),
      works,
      hands: hands(options.skill, paces.threadCord),
    }),
  ];
}

/** Buttonholes and buttons, of the band's overlap or of a wrap that buttons. */
export function fastenSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const all = [...panelWorks(bench), ...bench.skirt.waist.works];
  const [holes, buttons] = [named(all, 'buttonhole'), named(all, 'button')];
  const works = [...holes, ...buttons];
  if (works.length === 0) return [];
  const wrap = bench.skirt.overlap?.closes === 'buttons';
  return [
    step({
      id: 'fasten',
      after,
      station: 'machine',
      sentences: [
        wrap && say('fasten.wrap'),
        holes.length > 0 &&
          say(wrap ? 'fasten.buttonholeEach' : 'fasten.buttonhole', { holes: countOf(holes) }),
        buttons.length > 0 && say('fasten.button', { buttons: countOf(buttons) }),
      ],
      cautions: ['needle', 'shears', 'pins'],
      stitch: zigzagStitch,
      works,
      hands: hands(bench.options.skill, paces.fasten, wrap ? 4 : countOf(works)),
    }),
  ];
}
