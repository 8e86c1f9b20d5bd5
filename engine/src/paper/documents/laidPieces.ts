import type { FoundTable } from '../../cloth/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { PlannedCloth } from '../../workshop/index.ts';
import { bold, column, table, type Block } from '../layout/index.ts';
import { numbered } from '../pictures/chalk/numbered.ts';
import { namesIn } from '../pictures/layNames.ts';

/** What each piece is called among those of its own skirt. */
export function namesOnTable(
  { shares }: Pick<PlannedCloth, 'shares'>,
  speaker: Speaker,
): (piece: FoundTable['pieces'][number]) => string {
  const names = new Map(shares.map(({ skirt: { label, plan } }) => [label, namesIn(plan.skirt, speaker)]));
  return (piece) => names.get(piece.wearer)?.(piece) ?? '';
}

/** A piece on the cloth in words. */
export interface ToldPiece {
  readonly number: number;
  /** Empty for a skirt by itself. */
  readonly wearer: string;
  /** What it is, and what is particular about how it lies. */
  readonly name: string;
  readonly along: string;
  readonly across: string;
}

/** The pieces of one length in words, numbered as they are in its drawing. */
export function toldPieces(
  each: FoundTable,
  cloth: Pick<PlannedCloth, 'shares'>,
  speaker: Speaker,
): ToldPiece[] {
  const { workshop } = speaker.words;
  const nameOf = namesOnTable(cloth, speaker);
  const range = (from: number, to: number): string =>
    speaker.text(workshop.range, { from: length(from, speaker), to: length(to, speaker) });
  return numbered(each).map(({ number, piece, box }) => ({
    number,
    wearer: piece.wearer,
    name: [nameOf(piece), piece.onFold ? workshop.onFold : '', piece.turned ? workshop.headDown : '']
      .filter((text) => text !== '')
      .join(', '),
    along: range(box.left, box.right),
    across: range(box.top, box.bottom),
  }));
}

/** The same as a table, with the corners of each. */
export function piecesTable(each: FoundTable, cloth: Pick<PlannedCloth, 'shares'>, speaker: Speaker): Block {
  const { workshop } = speaker.words;
  const isNamed = each.pieces.some(({ wearer }) => wearer !== '');
  const chalked = numbered(each);
  const cornersOf = (at: number): string => {
    const { isBox = true, corners = [] } = chalked[at] ?? {};
    const told = corners.map(({ x, y }) =>
      speaker.text(workshop.corner, { along: length(x, speaker), across: length(y, speaker) }),
    );
    return isBox ? workshop.allRound : speaker.apart(told);
  };
  return table(
    [
      column(workshop.number, 0.35),
      ...(isNamed ? [column(workshop.whose, 0.9)] : []),
      column(workshop.piece, 1.1),
      column(workshop.along, 1.1),
      column(workshop.across, 1.1),
      column(workshop.corners, 2.4),
    ],
    toldPieces(each, cloth, speaker).map(({ number, wearer, name, along, across }, i) => [
      String(number),
      ...(isNamed ? [[bold(wearer)]] : []),
      name,
      along,
      across,
      cornersOf(i),
    ]),
  );
}

/** A distance on the cloth: what binary fractions take below 0 is 0. */
const length = (value: number, speaker: Speaker): string => speaker.length(mm(Math.max(0, value)));
