import type { ClothPiece } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { StepId } from '../../../sewing/index.ts';
import type { Panel, PartName } from '../../../skirt/index.ts';
import { group, inks, type Ink, type Mark } from '../../drawing/index.ts';
import { washOf } from '../clothInks.ts';
import { flatRows } from './panel.ts';
import type { Scene } from './picture.ts';

/** The layer of what has its cloth's tone already. */
const TONED = 'toned';

/** What has its tones already, whatever its step is about. */
export const keepTones = (marks: readonly Mark[]): Mark => group(TONED, marks);

/** The right side of a piece with the tone of the cloth that it is cut from. */
export const toned = ({ plan }: Pick<Scene, 'plan'>, piece: ClothPiece, marks: readonly Mark[]): Mark[] =>
  plan.cloths.length === 1 ? [...marks] : [keepTones(inTone(marks, washOf(plan, piece)))];

/** The same for a whole drawing: what has no tone yet is of the piece that its step is about. */
export function tonedByStep(scene: Scene, marks: readonly Mark[]): readonly Mark[] {
  const piece = scene.plan.cloths.length > 1 ? pieceOf(scene) : null;
  return piece === null ? marks : inTone(marks, washOf(scene.plan, piece));
}

const inTone = (marks: readonly Mark[], tone: Ink): Mark[] => {
  const own = (ink: Ink | null): Ink | null => (ink === inks.wash ? tone : ink);
  return marks.map((mark): Mark => {
    if (mark.kind === 'group')
      return mark.name === TONED ? mark : { ...mark, marks: inTone(mark.marks, tone) };
    if (mark.kind === 'text') return { ...mark, halo: own(mark.halo) };
    return { ...mark, style: { ...mark.style, fill: own(mark.style.fill), stroke: own(mark.style.stroke) } };
  });
};

export const firstPanel = ({ plan }: Pick<Scene, 'plan'>): Panel => plan.skirt.rounds[0].panels[0];
const lastPanel = ({ plan: { skirt } }: Scene): Panel => (skirt.rounds.at(-1) ?? skirt.rounds[0]).panels[0];

/** The piece that elastic runs through or that the top is sewn to: the panels themselves under a turned casing. */
export function topPiece({ plan }: Pick<Scene, 'plan'>): ClothPiece {
  const names = ['casing strip', 'waistband'] as const satisfies readonly PartName[];
  return names.find((name) => plan.skirt.parts.some((part) => part.name === name)) ?? firstPanel({ plan });
}

/** Tiers above and below a seam: of those that are of two cloths the first. */
export function tiersMeeting({ skirt, cloths }: SkirtPlan): { readonly above: Panel; readonly below: Panel } {
  const seams = skirt.rounds.slice(1).map(({ panels }, i) => ({
    above: (skirt.rounds[i] ?? skirt.rounds[0]).panels[0],
    below: panels[0],
  }));
  const [panel] = skirt.rounds[0].panels;
  const isTwo = ({ above, below }: { above: Panel; below: Panel }): boolean =>
    cloths.some(({ panels }) => panels.includes(above) !== panels.includes(below));
  return seams.find(isTwo) ?? seams[0] ?? { above: panel, below: panel };
}

type Of = (scene: Scene) => ClothPiece;

const first: Of = (scene) => firstPanel(scene);
const rowed: Of = (scene) =>
  flatRows(scene).rows[0]?.lines[0]?.panel ??
  scene.plan.ribbons.rows[0]?.lines[0]?.panel ??
  firstPanel(scene);

/** What a step's drawing shows, where that is one piece; a cloth before it is cut is the skirt's own. */
const pieces: Partial<Record<StepId, Of>> = {
  trim: first,
  hang: first,
  firstSeams: first,
  firstJoins: first,
  panelSeams: first,
  sideSeams: first,
  darts: first,
  pockets: first,
  opening: first,
  casing: first,
  cordEyelets: first,
  threadCord: first,
  joinStrips: lastPanel,
  finishEdges: lastPanel,
  hem: lastPanel,
  slits: lastPanel,
  faceEdges: lastPanel,
  tucks: lastPanel,
  chalkRows: rowed,
  holdRibbon: rowed,
  stitchRibbon: rowed,
  pressRows: rowed,
  applique: rowed,
  casingStrip: () => 'casing strip',
  threadElastic: topPiece,
  closeElastic: topPiece,
  bandPrepare: () => 'waistband',
  band: () => 'waistband',
  fasten: () => 'waistband',
  ties: () => 'tie',
};

const pieceOf = (scene: Scene): ClothPiece | null => pieces[scene.step.id]?.(scene) ?? null;
