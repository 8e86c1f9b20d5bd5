import { boundsOf, lengthOf, point, pointAt, type Point } from '../../../geometry/index.ts';
import { clothOf, laidOf, type ClothPiece, type Lay } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { EdgeName, Notch, PanelShape, Part, PieceShape } from '../../../skirt/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { finishedOf, hipOf, isPanelShape, onCentre, reachOf, type Hand } from './chalked.ts';
import { clothNamed } from '../clothInks.ts';
import { panelEdgeWords, partEdgeWords } from './edgeWords.ts';
import { panelGroups, type PanelGroup } from './groups.ts';

/** A width that is told above or below a piece, from and to places across it. */
export interface Across {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** One distinct piece as the chart shows it. Lengths are in the piece's own millimetres. */
export interface ChartPiece {
  /** What it is of the skirt. */
  readonly of: ClothPiece;
  readonly title: string;
  /** What is said below it, a line each. */
  readonly notes: readonly string[];
  readonly shape: PieceShape;
  readonly notches: readonly Notch[];
  readonly edgeWords: Readonly<Partial<Record<EdgeName, string>>>;
  readonly grain: 'down' | 'across' | 'along a side' | null;
  readonly centre: 'line' | 'fold' | null;
  readonly above: readonly Across[];
  readonly below: readonly Across[];
  /** Length to cut, told beside it; empty where the notes have it. */
  readonly down: string;
  /** Radii that a string swings, from the corner. */
  readonly swung: { readonly corner: Point; readonly waist: Radius; readonly hem: Radius } | null;
}

export interface Radius {
  readonly value: number;
  readonly text: string;
}

/** The distinct panels of a skirt. */
export const panelPieces = (plan: SkirtPlan, speaker: Speaker): ChartPiece[] =>
  panelGroups(plan).map((group) => panelPiece(plan, speaker, group));

/** Every other piece. */
export const partPieces = (plan: SkirtPlan, speaker: Speaker): ChartPiece[] =>
  plan.skirt.parts.map((part) => partPiece(plan, speaker, part));

/** `cut 6`, `cut 4, half of them mirrored`. */
export const cutText = (count: number, mirrored: number, { text, words: { papers } }: Speaker): string =>
  mirrored > 0 ? text(papers.pieceCutMirrored, { count, mirrored }) : text(papers.pieceCut, { count });

function panelPiece(plan: SkirtPlan, speaker: Speaker, group: PanelGroup): ChartPiece {
  const { skirt } = plan;
  const { papers, panels: names } = speaker.words;
  const [first] = group.panels;
  const { shape } = first;
  const called = [...new Set(group.panels.map(({ name }) => names[name]))].join(' + ');
  const isTier = skirt.rounds.length > 1;
  const name = isTier ? speaker.text(papers.tierNumber, { number: group.round }) : called;
  const alone = panelGroups(plan).filter(({ round }) => round === group.round).length === 1;
  const place = alone ? '' : placeOf(group, called, speaker);
  const isSwung = skirt.marking === 'swung' && shape.apex !== null;
  // The cloth's own length then runs across the piece.
  const isAcross = !isSwung && layOf(plan, first).printOnItsSide;
  const quarters = group.notches.length < shape.notches.length ? [papers.pieceQuarters] : [];
  return {
    of: first,
    title: [
      `${name}${place}`,
      cutText(group.panels.length, group.mirrors.length, speaker),
      clothNamed(plan, first, speaker),
    ]
      .filter((each) => each !== '')
      .join(' · '),
    shape,
    notches: group.notches,
    edgeWords: panelEdgeWords(skirt, group, speaker),
    ...(isSwung ? swungMeasures(shape, speaker) : chalkedMeasures(shape, speaker)),
    notes: [
      ...(isSwung ? [] : depthNotes(shape, speaker)),
      ...(isSwung ? [] : curveNotes(shape, speaker, plan.request.mark)),
      ...quarters,
      ...(isAcross ? [papers.pieceAcross] : []),
      ...(group.centreOnSome ? [papers.pieceCentreNotch] : []),
      ...(group.linesDiffer ? [papers.pieceNotchesBehind] : []),
    ],
    grain: isSwung ? 'along a side' : isAcross ? 'across' : 'down',
    centre: onFold(plan, group) ? 'fold' : 'line',
  };
}

/** How the cloth of a panel is laid. */
const layOf = (plan: SkirtPlan, panel: ClothPiece): Lay => laidOf(plan, clothOf(plan.cloths, panel)).chosen;

/** Where a lone panel is worn, in front or behind, where its name does not tell it from others of its round. */
function placeOf({ panels }: PanelGroup, called: string, { words }: Speaker): string {
  const [{ around }, ...others] = panels;
  if (others.length > 0) return '';
  const behind = Math.cos(Math.PI * (around.from + around.to));
  const place = behind > ACROSS ? words.panels.front : behind < -ACROSS ? words.panels.back : '';
  return place === '' || called.includes(place) ? '' : ` (${place})`;
}

/** Cosine of the turn from the centre within which a panel lies in front, or behind. */
const ACROSS = 0.99;

/** Whether the lay that was chosen cuts it on a fold. */
function onFold({ cloth, contrast }: SkirtPlan, { panels }: PanelGroup): boolean {
  return [cloth, ...contrast.map((each) => each.cloth)]
    .flatMap(({ chosen: { table, more } }) => [table, ...more])
    .flatMap(({ pieces }) => pieces)
    .some((piece) => piece.onFold && piece.panels.some((panel) => panels.includes(panel)));
}

type Measures = Pick<ChartPiece, 'above' | 'below' | 'down' | 'swung'>;

/** Below this two widths are one. */
const SAME = 0.5;

/** Half widths from the centre to the raw sides, one of a piece whose halves are alike; of a rectangle the whole. */
function chalkedMeasures(shape: PanelShape, speaker: Speaker): Measures {
  const at = (name: 'waist' | 'hem', hand: Hand) => reachOf(shape, name, hand);
  const [top, hem] = [at('waist', 'right'), at('hem', 'right')];
  const [topLeft, hemLeft] = [at('waist', 'left'), at('hem', 'left')];
  const down = speaker.length(mm(centreLength(shape)));
  const rectangle =
    !shape.apex &&
    Math.abs(top.along - hem.along) < SAME &&
    Math.abs(topLeft.along - hemLeft.along) < SAME &&
    !hipOf(shape, 'right');
  if (rectangle) {
    const text = speaker.length(mm(top.along + topLeft.along));
    return { above: [{ from: topLeft.at.x, to: top.at.x, text }], below: [], down, swung: null };
  }
  const halves = (right: typeof top, left: typeof top): Across[] =>
    Math.abs(right.along - left.along) < SAME
      ? [{ from: 0, to: right.at.x, text: speaker.length(right.along) }]
      : [
          {
            from: left.at.x,
            to: right.at.x,
            text: `${speaker.length(left.along)} + ${speaker.length(right.along)}`,
          },
        ];
  return { above: halves(top, topLeft), below: halves(hem, hemLeft), down, swung: null };
}

/** Level of the top line in the middle: above or below 0 where the top is not level. */
const topOf = (shape: PanelShape): number => {
  const path = finishedOf(shape, 'waist');
  return path.length === 0 ? 0 : pointAt(path, mm(lengthOf(path) / 2)).y;
};

/** From the raw top edge to what is cut at the bottom, down the centre. */
const centreLength = (shape: PanelShape): number =>
  boundsOf(shape.cut).bottom - topOf(shape) + shape.topAllowance;

const marginOf = ({ cut, length, hemAllowance }: PanelShape): number =>
  boundsOf(cut).bottom - length - hemAllowance;

function depthNotes(shape: PanelShape, speaker: Speaker): string[] {
  const { papers } = speaker.words;
  const margin = marginOf(shape);
  return [
    speaker.text(papers.pieceDepths, {
      above: speaker.length(shape.topAllowance),
      length: speaker.length(mm(shape.length - topOf(shape))),
      below: speaker.length(shape.hemAllowance),
    }),
    ...(margin > SAME ? [speaker.text(papers.panelTrim, { value: speaker.length(mm(margin)) })] : []),
  ];
}

/** The hip line, and how much higher than in the middle top and hem lie at the sides. */
function curveNotes(shape: PanelShape, speaker: Speaker, mark: Mm): string[] {
  const { papers } = speaker.words;
  const hip = hipOf(shape, 'right');
  const up = (name: 'waist' | 'hem', hand: Hand): number =>
    (name === 'waist' ? topOf(shape) : shape.length) - reachOf(shape, name, hand).at.y;
  const said = (word: string, name: 'waist' | 'hem'): string[] => {
    const [left, right] = [up(name, 'left'), up(name, 'right')];
    if (Math.max(Math.abs(left), Math.abs(right)) < mark / 2) return [];
    const value = (of: number): string =>
      speaker.text(of < 0 ? papers.pieceDown : papers.pieceUp, { value: speaker.length(mm(Math.abs(of))) });
    return [
      Math.abs(left - right) < SAME
        ? speaker.text(papers.pieceCurve, { edge: word, up: value(right) })
        : speaker.text(papers.pieceCurveUnlike, { edge: word, left: value(left), right: value(right) }),
    ];
  };
  return [
    ...(hip
      ? [
          speaker.text(papers.pieceHip, {
            half: speaker.length(hip.along),
            down: speaker.length(mm(onCentre(shape, hip.at) - topOf(shape))),
          }),
        ]
      : []),
    ...said(papers.edgeWaist, 'waist'),
    ...said(papers.edgeHem, 'hem'),
  ];
}

/** A part of a circle is swung about its corner: to the raw edge of the waist, and to the edge to cut at the hem. */
function swungMeasures(shape: PanelShape, speaker: Speaker): Measures {
  const waistRadius = shape.apex?.waistRadius ?? mm(0);
  const radius = (value: number): Radius => ({ value, text: speaker.length(mm(value)) });
  const swung = {
    corner: point(0, -waistRadius),
    waist: radius(Math.max(0, waistRadius - shape.topAllowance)),
    hem: radius(waistRadius + boundsOf(shape.cut).bottom),
  };
  return { above: [], below: [], down: '', swung };
}

function partPiece(plan: SkirtPlan, speaker: Speaker, part: Part): ChartPiece {
  const { cloth, contrast, lining, skirt } = plan;
  const { papers, parts } = speaker.words;
  const { shape } = part;
  const cloths = [cloth, ...contrast.map((each) => each.cloth), ...(lining ? [lining] : [])];
  const laid = cloths.flatMap(({ chosen }) => [chosen.table, ...chosen.more]);
  const isOnFold = laid.some(({ pieces }) =>
    pieces.some((piece) => piece.onFold && piece.parts.some(({ name }) => name === part.name)),
  );
  return {
    of: part.name,
    title: [
      parts[part.name],
      cutText(part.count, part.mirrored ? Math.floor(part.count / 2) : 0, speaker),
      part.cloth === 'skirt' ? clothNamed(plan, part.name, speaker) : papers.clothOf[part.cloth],
    ]
      .filter((each) => each !== '')
      .join(' · '),
    notes: part.measures.map((each) => `${speaker.name(each)} ${speaker.value(each)}`),
    shape,
    notches: shape.notches,
    edgeWords: partEdgeWords(skirt, part, speaker),
    grain: part.grain === 'either' ? null : part.grain,
    centre: isPanelShape(shape) ? (isOnFold ? 'fold' : 'line') : null,
    above: [],
    below: [],
    down: '',
    swung: null,
  };
}
