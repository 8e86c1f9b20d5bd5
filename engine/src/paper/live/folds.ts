import type { SkirtPlan } from '../../plan/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { place, type Mark } from '../drawing/index.ts';
import { isCharted } from '../pictures/pieces/charted.ts';
import { pieceChart, type ChartOf } from '../pictures/pieceChart.ts';
import { panelPieces } from '../pictures/pieces/chartPiece.ts';
import { chalkOn, mixed } from '../pictures/chalkOn.ts';
import { layPicture } from '../pictures/layPicture.ts';
import { flatMarks, flatOf, foldMarks, type Carried } from './folds/flat.ts';
import { openedMarks } from './folds/opened.ts';
import { packetMarks } from './folds/packet.ts';
import { HEIGHT, sceneOf, sentences, SIZE, stage, WIDTH, type FoldStage, type Scene } from './folds/stage.ts';

/**
 * From cloth to panels, a drawing for each thing to do: the cloth opened out, each fold, the folded cloth and what its
 * edges are, the marks one at a time, and the panels that the cutting gives. As the lay that was chosen asks.
 */
export function foldStages(plan: SkirtPlan, speaker: Speaker): readonly FoldStage[] {
  const scene = sceneOf(plan, speaker);
  if (isCharted(plan)) return [...folded(scene), laid(scene), ...swung(scene), charted(scene)];
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
  const first = sentences(scene, [
    'fold.double',
    'fold.lengthwise',
    'fold.lengthwisePieces',
    'fold.crosswise',
    'fold.crosswiseTurn',
  ]);
  return [
    stage(papers.clothFlat, lay, flatMarks(scene, flat)),
    ...ways[kind].map((carried, i) =>
      i === 0
        ? stage(papers.clothFirstFold, first, foldMarks(scene, flat, carried, 1))
        : stage(papers.clothSecondFold, sentences(scene, ['fold.grain']), foldMarks(scene, flat, carried, 2)),
    ),
  ];
}

/** A lay is drawn for paper: on a small screen its words want to be larger, where there is but one table. */
const LARGER = 1.2;
const SMALLER = 0.75;

/** The panels where they lie on the cloth; straight widths are chalked there. */
function laid(scene: Scene): FoldStage {
  const { plan, speaker } = scene;
  const { papers } = speaker.words;
  const wished = plan.cloth.chosen.more.length > 0 ? SMALLER : LARGER;
  const room = { width: mm(WIDTH / wished), height: mm(HEIGHT / wished) };
  const cloth = plan.cloth.chosen.table.layers === 1 ? scene.right : scene.wrong;
  const picture = layPicture(plan.cloth.chosen, speaker, 'large', room, { skirt: plan.skirt, cloth });
  // Several tables side by side take the width that their words need, whatever the room.
  const scale = Math.min(wished, WIDTH / picture.width, HEIGHT / picture.height);
  const widths = plan.skirt.marking === 'straight widths' && !isCharted(plan);
  const title = widths ? papers.markWidthsTitle : papers.clothPanels;
  const words = widths
    ? sentences(scene, ['mark.widths'])
    : speaker.text(papers.clothPanelsWords, { cloth: plan.cloth.chosen.clothAfter });
  return stage(title, words, [
    place(picture, mm((WIDTH - picture.width * scale) / 2), mm((HEIGHT - picture.height * scale) / 2), scale),
  ]);
}

/** How much chalk is rubbed on what is marked off, as in a lay. */
const PIECE = 0.16;

/** The string that is swung about the corner, on the cloth as it is folded. */
function swung(scene: Scene): FoldStage[] {
  const { plan, speaker, wrong, chalk } = scene;
  if (plan.skirt.marking !== 'swung') return [];
  const { papers } = speaker.words;
  const [piece] = panelPieces(plan, speaker);
  if (!piece?.swung) return [];
  const { waist, hem } = piece.swung;
  const told = sentences(scene, [
    'mark.swingPoint',
    'mark.swingString',
    'mark.swingTop',
    'mark.swingTopSewn',
    'mark.swingHem',
    'mark.swingSlit',
    'mark.swingHalf',
    'mark.swingSquare',
    'mark.swingSides',
  ]);
  const words = told || speaker.text(papers.swingWords, { waist: waist.text, hem: hem.text });
  return [
    stage(
      papers.swingTitle,
      words,
      chartMarks(scene, { fill: mixed(wrong, chalk, PIECE), ground: wrong, line: chalk, how: 'halved' }),
    ),
  ];
}

/** Every panel with its name and how many are cut; of pieces that are chalked one by one with what is chalked. */
function charted(scene: Scene): FoldStage {
  const { plan, speaker, right } = scene;
  const { papers } = speaker.words;
  const bare = plan.skirt.marking === 'swung';
  return stage(
    papers.piecesOpened,
    sentences(scene, ['mark.piece', 'mark.pieceHip', 'mark.pieceCurve', 'mark.notches', 'cut.label']) ||
      papers.piecesOpenedWords,
    chartMarks(scene, { fill: right, line: chalkOn(right), how: bare ? 'bare' : 'measures' }),
  );
}

const MARGIN = 2;

function chartMarks({ plan, speaker }: Scene, look: Omit<ChartOf, 'of' | 'size'>): Mark[] {
  const room = { width: mm(WIDTH - 2 * MARGIN), height: mm(HEIGHT - 2 * MARGIN) };
  const chart = pieceChart(plan, speaker, room, { of: 'panels', size: SIZE, ...look });
  // A chart with too many words is taller than its room.
  const scale = Math.min(1, room.height / chart.height);
  return [
    place(
      chart,
      mm(MARGIN + ((1 - scale) * room.width) / 2),
      mm(MARGIN + Math.max(0, (room.height - chart.height * scale) / 2)),
      scale,
    ),
  ];
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
      sentences(scene, ['mark.waist', 'mark.top', 'mark.curveWaist', 'mark.curveTop']),
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
        'mark.curveCutSewn',
        'mark.curveJoin',
        'mark.through',
        'mark.riseRoom',
        'mark.raised',
        'mark.lowered',
        'mark.riseJoin',
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
