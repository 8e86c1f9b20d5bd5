import type { NoticeParam } from '../../figure/index.ts';
import { boundsOf } from '../../geometry/index.ts';
import type { Panel, Round } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Bench } from '../bench.ts';
import { figure, type SewingFigureCode } from '../codes.ts';
import { joinedAs } from '../works.ts';
import { say, type Sentence } from '../sentence.ts';
import { measuresOf, type PieceMeasures } from './piece.ts';

/** A curve flatter than this is drawn straight. */
const FLAT = 2;
/** Two pieces are one where no tape tells them apart. */
const TAPE = 0.5;

/** Every piece by its own measures: the strips of each tier, or each panel that differs from the others. */
export const pieceMarks = (bench: Bench): Sentence[] =>
  joinedAs(bench) === 'strips' ? bench.skirt.rounds.map(tierMark) : panelMarks(bench);

function tierMark({ panels }: Round, at: number): Sentence {
  const { width, height } = boundsOf(panels[0].shape.cut);
  return say('mark.tier', {
    tier: at + 1,
    strips: panels.length,
    width: length(mm(width), 'sewing.pieceWidth'),
    length: length(mm(height), 'sewing.pieceLength'),
  });
}

function panelMarks({ skirt }: Bench): Sentence[] {
  const margin = mm(
    skirt.marks.cutLength.value -
      skirt.panelLength.value -
      skirt.waist.topAllowance.value -
      skirt.hemAllowance.value,
  );
  const kinds: { readonly panel: Panel; readonly of: PieceMeasures; count: number }[] = [];
  for (const panel of skirt.panels) {
    const of = measuresOf(panel.shape, margin);
    const alike = kinds.find(
      (kind) =>
        kind.panel.name === panel.name &&
        Math.abs(kind.of.top - of.top) < TAPE &&
        Math.abs(kind.of.hem - of.hem) < TAPE,
    );
    if (alike) alike.count += 1;
    else kinds.push({ panel, of, count: 1 });
  }
  return [
    say(skirt.waist.build === 'turned' ? 'mark.pieceLines' : 'mark.pieceLinesSewn', {
      top: skirt.waist.topAllowance,
      length: skirt.panelLength,
    }),
    ...kinds.flatMap(({ panel, of, count }) => {
      const piece = `panel ${panel.name}`;
      return [
        say('mark.piece', {
          pieces: count,
          piece,
          top: length(of.top, 'sewing.pieceTop'),
          hem: length(of.hem, 'sewing.pieceHem'),
          length: length(of.length, 'sewing.pieceLength'),
        }),
        ...(of.hip
          ? [
              say('mark.pieceHip', {
                piece,
                down: length(of.hip.down, 'sewing.pieceHipLine'),
                hip: length(of.hip.width, 'sewing.pieceHip'),
              }),
            ]
          : []),
        ...curve(piece, of),
      ];
    }),
    ...(skirt.overlap ? [say('mark.freeEdges', { facing: skirt.overlap.facing })] : []),
  ];
}

function curve(piece: string, { topDip, hemDip }: PieceMeasures): Sentence[] {
  const [top, hem] = [topDip > FLAT, hemDip > FLAT];
  const told: Record<string, NoticeParam> = {
    piece,
    edges: top && hem ? 'both' : top ? 'top' : 'hem',
    top: length(mm(Math.max(0, topDip)), 'sewing.pieceDip'),
    hem: length(mm(Math.max(0, hemDip)), 'sewing.pieceDip'),
  };
  return top || hem ? [say('mark.pieceCurve', told)] : [];
}

const length = (value: Mm, code: SewingFigureCode) => figure.length(value, code);
