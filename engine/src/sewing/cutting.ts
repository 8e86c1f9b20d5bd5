import { patternKind } from '../cloth/index.ts';
import type { NoticeParam } from '../figure/index.ts';
import { boundsOf } from '../geometry/index.ts';
import { mm } from '../units/index.ts';
import { step, type Bench } from './bench.ts';
import { cutFromSentences, laySentences, outlinesOn, ownCloth } from './cloths.ts';
import { figure } from './codes.ts';
import { isLevel, markSentences } from './marks/index.ts';
import { partSentences, roundParts } from './parts.ts';
import { roundPanel } from './prepare.ts';
import { say, type Sentence } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { joinedAs } from './works.ts';
import { hands, paces, together, waiting } from './time.ts';

/** Hours that a skirt cut off the grain hangs before its hem is trued: 24 in extension leaflets (48 in one). */
const HANG_HOURS = 24;

/** From square cloth to panels with their rows' edge trimmed true. */
export function cuttingSteps(bench: Bench): Step[] {
  const { skirt, cloth, options } = bench;
  const { skill } = options;
  const lay = cloth.chosen;
  const cutsThroughFour = lay.table.layers === 4;
  const cuts = cutsThroughFour ? 1 : lay.table.pieces.length;
  // Other cloths are laid and cut after the skirt's own, outline by outline.
  const others = outlinesOn(bench) - cuts;
  const straightWidths = skirt.marking === 'straight widths';
  const steps = [
    step({
      id: 'fold',
      after: ['straighten', 'measure'],
      station: 'table',
      sentences: [...ownCloth(bench), ...foldSentences(bench), ...laySentences(bench)],
      hands: together(...bench.cloths.map(() => hands(skill, paces.fold))),
    }),
    step({
      id: 'mark',
      after: ['fold'],
      station: 'table',
      sentences: markSentences(bench),
      hands: hands(skill, paces.mark, 4 * (cuts + others)),
    }),
    step({
      id: 'cut',
      after: ['mark'],
      station: 'table',
      sentences: [
        say('cut.pinLayers', { layers: lay.table.layers }),
        say('cut.smooth'),
        cutsThroughFour && say('cut.slitFold'),
        straightWidths && say('cut.tear'),
        halvesApart(bench) ? say('cut.halvesApart') : topsApart(bench) && say('cut.topsApart'),
        ...labels(bench),
        ...cutFromSentences(bench),
        ...partSentences(bench),
      ],
      cautions: ['shears', 'pins'],
      hands: together(
        hands(skill, paces.cut, 0, mm(((cutsThroughFour ? 0.5 : cuts) + others) * roundPanel(bench))),
        ...(skirt.parts.length > 0
          ? [hands(skill, paces.cutParts, skirt.parts.length, roundParts(bench))]
          : []),
      ),
    }),
  ];
  const trim = step({
    id: 'trim',
    after: [hangsUntrimmed(bench) ? 'hang' : 'cut'],
    station: 'table',
    sentences: trimSentences(bench),
    cautions: ['shears'],
    hands: hands(skill, paces.trim, skirt.panels.length),
  });
  if (!skirt.hang.mustHang) return [...steps, trim];
  const hang = step({
    id: 'hang',
    after: [hangsUntrimmed(bench) ? 'cut' : 'trim'],
    station: 'table',
    sentences: [
      say('hang.day', { hours: figure.count(HANG_HOURS, 'sewing.hangHours') }),
      say(hangsUntrimmed(bench) ? 'hang.leave' : 'hang.true'),
    ],
    hands: hands(skill, paces.hang),
    wait: waiting(HANG_HOURS * 60),
  });
  return hangsUntrimmed(bench) ? [...steps, hang, trim] : [...steps, trim, hang];
}

/** A curved hem drops unevenly: its margin stays on while it hangs, and it is trimmed once. */
const hangsUntrimmed = ({ skirt: { hang } }: Bench): boolean => hang.mustHang && hang.shape === 'curved';

/** The step after which panels are ready for their rows. */
export const panelsReady = (bench: Bench): StepId =>
  bench.skirt.hang.mustHang && !hangsUntrimmed(bench) ? 'hang' : 'trim';

/** Whether panels that the scissors go through together have tops of their own. */
const topsApart = ({ cloth: { chosen } }: Bench): boolean =>
  chosen.table.pieces.some(({ panels: [first, ...others] }) =>
    others.some(({ shape }) => Math.abs(heightOf(shape) - heightOf(first?.shape ?? shape)) > CHALK),
  );
/** Whether layers that lie on one another are halves of panels whose left and right differ at the top. */
const halvesApart = ({ body: { rises }, cloth: { chosen } }: Bench): boolean =>
  Math.abs(rises.left.value - rises.right.value) > CHALK &&
  (chosen.table.layers > 1 || chosen.table.pieces.some(({ onFold }) => onFold));
const heightOf = (shape: Bench['skirt']['panels'][0]['shape']): number => boundsOf(shape.trimmed).height;
/** What a chalk line is wide, mm. */
const CHALK = 1;

/** Panels are named as they come off the table: nothing shows afterwards which is which. */
function labels({ skirt }: Bench): Sentence[] {
  if (skirt.marking === 'by piece') return [say('cut.label')];
  return skirt.panels.length > 1 || skirt.marking !== 'swung' ? [say('cut.frontBack')] : [];
}

function trimSentences(bench: Bench): Sentence[] {
  const { skirt } = bench;
  const { margin, hemAllowance } = skirt;
  if (joinedAs(bench) === 'strips')
    return [
      say('trim.strips'),
      ...(margin.value > 0 ? [say('trim.square', { trimOff: margin })] : []),
      say('trim.beforeRows'),
    ];
  return [
    skirt.hang.shape === 'curved'
      ? hangsUntrimmed(bench)
        ? say('trim.hung', {
            length: skirt.panelLength,
            hem: hemAllowance,
            top: isLevel(bench) ? 'level' : 'risen',
          })
        : say('trim.curve', { hem: hemAllowance })
      : say('trim.square', { trimOff: trimOff(bench) }),
    say(isLevel(bench) ? 'trim.check' : 'trim.checkRisen', { length: rawLength(bench) }),
    say('trim.beforeRows'),
  ];
}

const trimOff = ({ skirt: { marks, panelLength, hemAllowance, waist } }: Bench) =>
  figure.length(
    mm(marks.cutLength.value - panelLength.value - hemAllowance.value - waist.topAllowance.value),
    'sewing.trimOff',
    { cutLength: marks.cutLength, length: panelLength, hem: hemAllowance, casing: waist.topAllowance },
  );

/** Raw edge to raw edge once trimmed, along the centre. */
const rawLength = ({ skirt: { panelLength, hemAllowance, waist } }: Bench) =>
  figure.length(mm(panelLength.value + hemAllowance.value + waist.topAllowance.value), 'sewing.rawLength', {
    length: panelLength,
    hem: hemAllowance,
    casing: waist.topAllowance,
  });

function foldSentences(bench: Bench): Sentence[] {
  const { table, more } = bench.cloth.chosen;
  const isSame = more.some(({ where, layers }) => where === 'another' && layers === table.layers);
  return [...foldedOnce(bench), ...onPattern(bench), ...(isSame ? [say('fold.lengths')] : [])];
}

/** That the fold lies where the pattern of the two layers falls on itself: by hand nobody looks for that. */
function onPattern({ cloth: { chosen, fabric, notices } }: Bench): Sentence[] {
  const pattern = patternKind(fabric);
  const isByHand = notices.some(({ code }) => code === 'cloth.laidByHand');
  if (!pattern || chosen.table.layers === 1 || isByHand) return [];
  const offMiddle = chosen.kind === 'lengthwise fold' && pattern !== 'bands';
  const onBand = chosen.kind === 'crosswise fold' && pattern !== 'stripes';
  return [say('fold.pattern', { pattern, fold: offMiddle ? 'offMiddle' : onBand ? 'onBand' : 'selvages' })];
}

/** How one length of the cloth is put on the table. */
function foldedOnce({ cloth, skirt }: Bench): Sentence[] {
  const lay = cloth.chosen;
  const size: Record<string, NoticeParam> = { cloth: lay.tableCloth, panels: skirt.panels.length };
  // Straight widths are only cut across: nothing is marked at a fold.
  const stack =
    skirt.marking === 'at the fold' ? [say(lay.headToTail ? 'fold.wholePanels' : 'fold.stack')] : [];
  switch (lay.kind) {
    case 'double fold':
      return [say('fold.double', size), say('fold.doubleEdges'), say('fold.grain')];
    case 'lengthwise fold':
      return [
        say(
          lay.table.pieces.every(({ onFold }) => onFold) ? 'fold.lengthwise' : 'fold.lengthwisePieces',
          size,
        ),
        say('fold.grain'),
      ];
    case 'crosswise fold':
      return [
        say('fold.crosswise', size),
        ...(cloth.fabric.oneWay && !lay.printOnItsSide ? [say('fold.crosswiseTurn')] : []),
        ...stack,
      ];
    case 'open':
      return [say(lay.headToTail ? 'fold.openHeadToTail' : 'fold.open', size), ...stack];
  }
}
