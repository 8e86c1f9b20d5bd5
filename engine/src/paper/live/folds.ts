import type { SkirtPlan } from '../../plan/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { place } from '../drawing/index.ts';
import { layPicture } from '../pictures/layPicture.ts';
import { flatMarks, flatOf, foldMarks, type Carried } from './folds/flat.ts';
import { openedMarks } from './folds/opened.ts';
import { packetMarks } from './folds/packet.ts';
import { HEIGHT, sceneOf, sentences, stage, WIDTH, type FoldStage, type Scene } from './folds/stage.ts';

/**
 * From cloth to panels, a drawing for each thing to do: the cloth opened out, each fold, the folded cloth and what its
 * edges are, the marks one at a time, and the panels that the cutting gives. As the lay that was chosen asks.
 */
export function foldStages(plan: SkirtPlan, speaker: Speaker): readonly FoldStage[] {
  const scene = sceneOf(plan, speaker);
  const marked = plan.skirt.marking === 'at the fold' ? markedAtTheFold(scene) : [laid(scene)];
  return [...folded(scene), ...marked, opened(scene)];
}

const ways: Readonly<Record<SkirtPlan['cloth']['chosen']['kind'], readonly Carried[]>> = {
  // Ends onto ends, then those over to the first fold: two folds come to lie at the left, the centre.
  'double fold': ['right', 'left'],
  'lengthwise fold': ['lower'],
  'crosswise fold': ['right'],
  open: [],
};

function folded(scene: Scene): FoldStage[] {
  const { speaker, plan } = scene;
  const { papers } = speaker.words;
  const flat = flatOf(scene);
  const { kind } = plan.cloth.chosen;
  const lay =
    kind === 'open'
      ? sentences(scene, ['fold.open', 'fold.openHeadToTail'])
      : speaker.text(papers.clothFlatWords, {
          along: plan.cloth.chosen.tableCloth,
          across: speaker.length(flat.across),
        });
  const first = sentences(scene, ['fold.double', 'fold.lengthwise', 'fold.crosswise', 'fold.crosswiseTurn']);
  return [
    stage(papers.clothFlat, lay, flatMarks(scene, flat)),
    ...ways[kind].map((carried, i) =>
      i === 0
        ? stage(papers.clothFirstFold, first, foldMarks(scene, flat, carried, 1))
        : stage(papers.clothSecondFold, sentences(scene, ['fold.grain']), foldMarks(scene, flat, carried, 2)),
    ),
  ];
}

/** A lay is drawn for paper: on a small screen its words want to be larger. */
const LARGER = 1.2;

/** The panels where they lie on the cloth; straight widths are chalked there. */
function laid(scene: Scene): FoldStage {
  const { plan, speaker } = scene;
  const { papers } = speaker.words;
  const room = { width: mm(WIDTH / LARGER), height: mm(HEIGHT / LARGER) };
  const picture = layPicture(plan.cloth.chosen, speaker, 'large', room, { cloth: scene.wrong });
  const widths = plan.skirt.marking === 'straight widths';
  const title = widths ? papers.markWidthsTitle : papers.clothPanels;
  const words = widths
    ? sentences(scene, ['mark.widths'])
    : speaker.text(papers.clothPanelsWords, { cloth: plan.cloth.chosen.clothAfter });
  return stage(title, words, [
    place(
      picture,
      mm((WIDTH - picture.width * LARGER) / 2),
      mm((HEIGHT - picture.height * LARGER) / 2),
      LARGER,
    ),
  ]);
}

function markedAtTheFold(scene: Scene): FoldStage[] {
  const { papers } = scene.speaker.words;
  const { kind, headToTail } = scene.plan.cloth.chosen;
  const stacked = sentences(scene, ['fold.stack']) !== '';
  const title = stacked ? papers.clothStacked : headToTail ? papers.clothCentre : papers.clothFolded;
  const edges = sentences(scene, [
    'fold.stack',
    'fold.wholePanels',
    'fold.doubleEdges',
    'mark.fromFold',
    'mark.fromCentre',
  ]);
  return [
    ...(kind === 'double fold' ? [] : [laid(scene)]),
    stage(title, edges, packetMarks(scene, 'none')),
    stage(
      papers.markWaistTitle,
      sentences(scene, ['mark.waist', 'mark.curveWaist']),
      packetMarks(scene, 'waist'),
    ),
    stage(papers.markLengthTitle, sentences(scene, ['mark.bottom']), packetMarks(scene, 'length')),
    stage(papers.markHemTitle, sentences(scene, ['mark.hem', 'mark.curveHem']), packetMarks(scene, 'hem')),
    stage(
      papers.markJoinTitle,
      sentences(scene, [
        'mark.join',
        'mark.casingEnd',
        'mark.hemEnd',
        'mark.curve',
        'mark.curveCut',
        'mark.curveJoin',
        'mark.through',
      ]),
      packetMarks(scene, 'joined'),
    ),
  ];
}

function opened(scene: Scene): FoldStage {
  const words = sentences(scene, [
    'cut.pinLayers',
    'cut.slitFold',
    'cut.smooth',
    'cut.tear',
    'cut.frontBack',
  ]);
  return stage(scene.speaker.words.papers.cutOpened, words, openedMarks(scene));
}

export type { FoldStage };
