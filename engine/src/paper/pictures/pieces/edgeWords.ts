import type { EdgeName, Part, Skirt } from '../../../skirt/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { isPanelShape } from './chalked.ts';
import type { PanelGroup } from './groups.ts';

export type EdgeWords = Readonly<Partial<Record<EdgeName, string>>>;

/** What each edge of a panel is, by where the panels that are cut alike are worn. */
export function panelEdgeWords(
  skirt: Skirt,
  { panels, round, mirrors }: PanelGroup,
  speaker: Speaker,
): EdgeWords {
  const { papers } = speaker.words;
  const [{ shape }] = panels;
  const isTurned = (name: EdgeName): boolean => shape.edges.some((edge) => edge.name === name && edge.turned);
  // A panel is drawn from outside: the wearer's left is at its right, where the turns go on.
  const side = (name: 'left' | 'right'): string => {
    if (isTurned(name)) return papers.edgeFacing;
    const words = new Set(
      panels.map((panel) => {
        const isRight = (name === 'right') !== mirrors.includes(panel);
        return seamAt(isRight ? panel.around.to : panel.around.from, speaker);
      }),
    );
    const [only] = words;
    return words.size === 1 && only !== undefined ? only : papers.edgeSeam;
  };
  return {
    waist: round === 1 ? papers.edgeWaist : papers.edgeTierAbove,
    right: side('right'),
    hem: round === skirt.rounds.length ? papers.edgeHem : papers.edgeTierBelow,
    left: side('left'),
  };
}

/** Nearer than this, in turns, a seam is where it is named for. */
const NEAR = 0.005;

function seamAt(turn: number, { words: { papers } }: Speaker): string {
  const at = (place: number): boolean => Math.abs(turn - place - Math.round(turn - place)) < NEAR;
  if (at(0)) return papers.edgeCentreFront;
  if (at(0.5)) return papers.edgeCentreBack;
  return at(0.25) || at(0.75) ? papers.edgeSideSeam : papers.edgeSeam;
}

/** Of a part only what tells which way round it goes. */
export function partEdgeWords(skirt: Skirt, { shape }: Part, { words: { papers } }: Speaker): EdgeWords {
  if (isPanelShape(shape))
    return { waist: papers.edgeWaist, hem: papers.edgeHem, left: papers.edgeSeam, right: papers.edgeSeam };
  const words: Partial<Record<EdgeName, string>> = {};
  if (shape.folds && shape.folds.length > 0) words.hem = papers.edgeToSkirt;
  if (shape.notches.some(({ use }) => use === 'pocket'))
    words.left = skirt.sideSeams > 0 ? papers.edgePocket : papers.edgeSeam;
  return words;
}
