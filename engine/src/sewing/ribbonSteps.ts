import { colourKey } from '../fields/index.ts';
import type { NoticeParam } from '../figure/index.ts';
import { inches, mm } from '../units/index.ts';
import {
  goRound,
  keepsSelvages,
  lengthOfLines,
  seamFromEdge,
  step,
  straightStitch,
  stripsOf,
  type Bench,
} from './bench.ts';
import { figure } from './codes.ts';
import { panelsReady } from './cutting.ts';
import { say, type Sentence, type Step, type StepId } from './step.ts';
import { hands, paces, together, waiting } from './time.ts';

/** Distance at which temporary spray is held: about 12 in (30 cm). Common practice, no source. */
const SPRAY_DISTANCE = inches(12);
const GLUE_DRIES = 15;

/** From bare panels to panels with their ribbons on. Rows that go round are sewn after all seams but one. */
export function ribbonSteps(bench: Bench): Step[] {
  const { ribbons, ribbonOptions, options, skirt } = bench;
  const { skill } = options;
  const strips = stripsOf(bench);
  const round = goRound(bench);
  // A skirt of one width has no seam but the last.
  const seamsFirst = round && skirt.sideSeams > 1;
  const hasRows = ribbons.rows.length > 0;
  const test = testStitch(bench);
  if (!hasRows) return [test, ...appliqueSteps(bench, [panelsReady(bench), 'testStitch'])];
  const rows = figure.count(ribbons.rows.length, 'sewing.rows');
  const stripCount = figure.count(strips, 'sewing.strips');
  const chalkedOn: StepId = seamsFirst ? 'firstSeams' : panelsReady(bench);
  const held: Sentence[] = [say('holdRibbon.lay'), holdSentence(ribbonOptions.hold)];
  if (ribbons.rows.some(({ gapBelow }) => gapBelow?.value === 0)) held.push(say('holdRibbon.touching'));
  const changes = threadChanges(bench);
  return [
    test,
    ...(seamsFirst ? [firstSeams(bench)] : []),
    step({
      id: 'chalkRows',
      after: [chalkedOn],
      station: 'table',
      sentences: [
        say('chalkRows.rightSide'),
        say('chalkRows.fromRaw', { hem: skirt.hemAllowance }),
        say('chalkRows.lowerEdge', { rows }),
        skirt.hang.shape === 'curved' && say('chalkRows.curve'),
        !seamsFirst && say('chalkRows.both'),
      ],
      hands: hands(skill, paces.chalkRows, round ? ribbons.rows.length : strips),
    }),
    step({
      id: 'cutRibbon',
      // Strips are measured for this body; ribbon that is washed is cut after its wash.
      after: ribbonOptions.washed ? ['measure'] : ['measure', 'prewash'],
      station: 'table',
      sentences: [
        round ? say('cutRibbon.round', { rows }) : say('cutRibbon.strips', { strips: stripCount }),
        say(`cutRibbon.${ribbonOptions.ends}`),
      ],
      cautions: [
        ribbonOptions.ends === 'flame' && 'flame',
        ribbonOptions.ends === 'sealant' && 'liquid',
        'shears',
      ],
      hands: together(
        hands(skill, paces.cutRibbon, strips),
        ...(ribbonOptions.ends === 'none' ? [] : [hands(skill, paces.seal, 2 * strips)]),
      ),
    }),
    step({
      id: 'holdRibbon',
      after: ['chalkRows', 'cutRibbon'],
      station: 'table',
      sentences: held,
      cautions: [
        ribbonOptions.hold === 'spray' && 'spray',
        ribbonOptions.hold === 'pins' && 'pins',
        ribbonOptions.hold === 'glue' && 'liquid',
      ],
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
        ribbons.rows.some(({ curve }) => (curve?.share.value ?? 0) > ribbonOptions.easesUnseen) &&
          say('stitchRibbon.ease'),
      ],
      cautions: ['needle', ribbonOptions.hold === 'pins' && 'pins'],
      stitch: straightStitch,
      hands: together(
        hands(skill, paces.stitchRibbon, 2 * strips, lengthOfLines(bench, 'ribbon edge')),
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

const testStitch = ({ options, ribbons }: Bench): Step =>
  step({
    id: 'testStitch',
    after: ['cut'],
    station: 'machine',
    sentences: [
      ribbons.rows.length > 0 && say('testStitch.needle'),
      say('testStitch.bobbin'),
      say('testStitch.scrap'),
    ],
    cautions: ['needle'],
    stitch: straightStitch,
    hands: hands(options.skill, paces.testStitch),
  });

function holdSentence(hold: Bench['ribbonOptions']['hold']): Sentence {
  const params: Record<string, NoticeParam> =
    hold === 'spray' ? { distance: figure.length(SPRAY_DISTANCE, 'sewing.sprayDistance') } : {};
  return say(`holdRibbon.${hold}`, params);
}

/** The needle is threaded anew where the next row is of another colour. */
function threadChanges({ ribbons }: Bench) {
  const keys = ribbons.rows.map(({ colour }) => colourKey(colour));
  return figure.count(keys.filter((key, i) => key !== keys[i - 1]).length, 'sewing.threadChanges');
}

function firstSeams(bench: Bench): Step {
  const { skirt, options } = bench;
  const seams = skirt.sideSeams - 1;
  const each = lengthOfLines(bench, 'side seam') / skirt.sideSeams;
  return step({
    id: 'firstSeams',
    after: [panelsReady(bench), 'testStitch'],
    station: 'machine',
    sentences: [
      say('firstSeams.round', { seams, seam: seamFromEdge(bench) }),
      !keepsSelvages(bench) && say('firstSeams.finish'),
    ],
    cautions: ['needle'],
    stitch: straightStitch,
    hands: hands(options.skill, paces.seam, seams, mm(seams * each)),
  });
}

/** A motif is sewn on while the panel still lies flat: after the rows, so that it may lie over them. */
function appliqueSteps({ options }: Bench, after: readonly StepId[]): Step[] {
  if (!options.applique) return [];
  return [
    step({
      id: 'applique',
      after,
      station: 'machine',
      sentences: [say('applique.place'), say('applique.web'), say('applique.stitch')],
      cautions: ['hotIron', 'needle'],
      hands: hands(options.skill, paces.applique),
    }),
  ];
}

/** The last step on flat panels. */
export const panelsDone = ({ options, ribbons, ...bench }: Bench): StepId => {
  if (options.applique) return 'applique';
  return ribbons.rows.length > 0 ? 'pressRows' : panelsReady({ options, ribbons, ...bench });
};
