import type { Panel } from '../../../skirt/index.ts';
import type { Sheet, Sheets } from './sheet.ts';

/** A side of a panel as it is drawn. */
export interface SheetSide {
  readonly sheet: Sheet;
  readonly hand: -1 | 1;
}

const HAIR = 1e-6;
const isAt = (turn: number, other: number): boolean =>
  Math.abs(turn - other - Math.round(turn - other)) < HAIR;

/**
 * The side of a drawn panel that is sewn in the seam at a turn of the body: of a round's first panels themselves, else of those
 * that are like them; the right side of the first where no seam is there.
 */
export function sideAtTurn({ all, tiers }: Sheets, round: number, turn: number): SheetSide {
  const sheets = tiers ? all.filter(({ kind }) => kind.round === round) : all;
  const [first = all[0]] = sheets;
  const found = (panelsOf: (sheet: Sheet) => readonly Panel[]): SheetSide | null => {
    for (const sheet of sheets) {
      const panels = panelsOf(sheet).filter(({ shape }) => shape === sheet.shape || shape.symmetric);
      if (panels.some(({ around }) => isAt(around.to, turn))) return { sheet, hand: 1 };
      if (panels.some(({ around }) => isAt(around.from, turn))) return { sheet, hand: -1 };
    }
    return null;
  };
  return (
    found(({ kind }) => kind.panels.slice(0, 1)) ??
    found(({ kind }) => kind.panels) ?? { sheet: first, hand: 1 }
  );
}

/** The free edge of a skirt that lies over itself, where it begins: the left front's. */
export function freeSide({ all }: Sheets): SheetSide {
  const starts = (sheet: Sheet): number => Math.min(...sheet.kind.panels.map(({ around }) => around.from));
  const [sheet = all[0]] = [...all].sort((one, other) => starts(one) - starts(other));
  // A kind that is drawn by the other front shows the edge on its other side.
  const own = sheet.kind.panels[0].around.from <= starts(sheet) + HAIR;
  return { sheet, hand: own ? -1 : 1 };
}
