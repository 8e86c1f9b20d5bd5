import { colourKey } from '../fields/index.ts';
import type { Row } from '../ribbon/index.ts';
import { flatRows, goRound, step, straightStitch, stripsOf, type Bench } from './bench.ts';
import { severalCloths, weightsDiffer } from './cloths.ts';
import { figure } from './codes.ts';
import { GLUE_DRIES, holdCautions, holdSentence } from './hold.ts';
import { rowsStart } from './joins.ts';
import { cutRibbon, edgesAlong } from './rows.ts';
import { say, type Sentence } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces, together, waiting } from './time.ts';
import { joinedAs, seamsInTurn } from './works.ts';

/** From bare panels to panels with their ribbons on. */
export function ribbonSteps(bench: Bench): Step[] {
  const { ribbonOptions, options, skirt } = bench;
  const { skill } = options;
  const flat = flatRows(bench);
  const strips = stripsOf(flat);
  const round = goRound(bench);
  // A skirt of one width has no seam but the last.
  const seamsFirst = seamsInTurn(bench).first.length > 0;
  const ready = rowsStart(bench);
  if (flat.length === 0) return [...cutRibbon(bench), ...appliqueSteps(bench, [ready, 'testStitch'])];
  const rows = figure.count(flat.length, 'sewing.rows');
  const held: Sentence[] = [say('holdRibbon.lay'), holdSentence(ribbonOptions.hold)];
  if (flat.some(({ gapBelow }, i) => i > 0 && gapBelow?.value === 0)) held.push(say('holdRibbon.touching'));
  const changes = threadChanges(flat);
  return [
    step({
      id: 'chalkRows',
      after: [ready],
      station: 'table',
      sentences: [
        say('chalkRows.rightSide'),
        say(skirt.hang.shape === 'curved' ? 'chalkRows.fromRawCurve' : 'chalkRows.fromRaw', {
          hem: skirt.hemAllowance,
        }),
        flat.some((row) => row.round < skirt.rounds.length) && say('chalkRows.fromTier'),
        say('chalkRows.lowerEdge', { rows }),
        !seamsFirst && say('chalkRows.both'),
      ],
      hands: hands(skill, paces.chalkRows, round ? flat.length : strips),
    }),
    ...cutRibbon(bench),
    step({
      id: 'holdRibbon',
      after: ['chalkRows', 'cutRibbon'],
      station: 'table',
      sentences: held,
      cautions: holdCautions(ribbonOptions.hold),
      hands: hands(skill, paces.hold, strips),
      ...(ribbonOptions.hold === 'glue' ? { wait: waiting(GLUE_DRIES) } : {}),
    }),
    step({
      id: 'stitchRibbon',
      after: ['holdRibbon', 'testStitch'],
      station: 'machine',
      sentences: [
        say('stitchRibbon.order'),
        say('stitchRibbon.edge'),
        say('stitchRibbon.sameWay'),
        say('stitchRibbon.thread', { changes }),
        flat.some(({ curve }) => (curve?.share.value ?? 0) > ribbonOptions.easesUnseen) &&
          say('stitchRibbon.ease'),
      ],
      cautions: ['needle', ribbonOptions.hold === 'pins' && 'pins'],
      stitch: straightStitch,
      hands: together(
        hands(skill, paces.stitchRibbon, 2 * strips, edgesAlong(flat)),
        hands(skill, paces.rethread, changes.value),
      ),
    }),
    step({
      id: 'pressRows',
      after: ['stitchRibbon'],
      station: 'iron',
      sentences: [say('pressRows.cool')],
      cautions: ['satinIron'],
      hands: hands(skill, paces.pressRows, strips),
    }),
    ...appliqueSteps(bench, ['pressRows']),
  ];
}

/** What is set up once there is a scrap to try it on. */
export function testStitch(bench: Bench): Step {
  const { options, ribbons, threadColour } = bench;
  const several = severalCloths(bench);
  return step({
    id: 'testStitch',
    after: ['cut'],
    station: 'machine',
    sentences: [
      ribbons.rows.length > 0 && say('testStitch.needle'),
      weightsDiffer(bench) && say('testStitch.weights'),
      several && say('testStitch.threadCloths', { colour: threadColour }),
      say(several && threadColour !== 'own' ? 'testStitch.bobbinCloths' : 'testStitch.bobbin'),
      say('testStitch.scrap'),
    ],
    cautions: ['needle'],
    stitch: straightStitch,
    hands: hands(options.skill, paces.testStitch),
  });
}

/** The needle is threaded anew where the next row is of another colour. */
function threadChanges(rows: readonly Row[]) {
  const keys = rows.map(({ colour }) => colourKey(colour));
  return figure.count(keys.filter((key, i) => key !== keys[i - 1]).length, 'sewing.threadChanges');
}

/** A motif is sewn on while the panel still lies flat: after the rows, so that it may lie over them. */
function appliqueSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { options } = bench;
  if (!options.applique) return [];
  return [
    step({
      id: 'applique',
      after,
      station: 'machine',
      sentences: [
        say('applique.place'),
        say('applique.web'),
        say(joinedAs(bench) === 'sides' ? 'applique.stitch' : 'applique.stitchFlat'),
      ],
      cautions: ['hotIron', 'needle'],
      hands: hands(options.skill, paces.applique),
    }),
  ];
}

/** The last step on flat panels. */
export function panelsDone(bench: Bench): StepId {
  if (bench.options.applique) return 'applique';
  return flatRows(bench).length > 0 ? 'pressRows' : rowsStart(bench);
}
