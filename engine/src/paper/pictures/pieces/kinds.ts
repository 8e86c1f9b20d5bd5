import type { Row, RowLine } from '../../../ribbon/index.ts';
import type { Panel, PanelShape, Skirt } from '../../../skirt/index.ts';
import { pointOnLevel } from './chalked.ts';

/** Panels of one round that are alike where rows lie, whatever their notches and the rise of their tops. */
export interface PanelKind {
  /** From the top, from 1. */
  readonly round: number;
  readonly panels: readonly [Panel, ...Panel[]];
}

/** The kinds of panels of a skirt: those of its one round, or of tiers the first of each. */
export function panelKinds({ rounds }: Pick<Skirt, 'rounds'>): PanelKind[] {
  return rounds.flatMap(({ panels }, i) => {
    const kinds: [Panel, ...Panel[]][] = [];
    for (const panel of panels) {
      const kind = kinds.find(([{ shape }]) => shape === panel.shape || sameBelow(shape, panel.shape));
      if (kind) kind.push(panel);
      else kinds.push([panel]);
    }
    const shown = rounds.length > 1 ? kinds.slice(0, 1) : kinds;
    return shown.map((members) => ({ round: i + 1, panels: members }));
  });
}

const ALIKE = 0.05;

/** Whether two panels are of one length and as wide half-way down and at the hem. */
const sameBelow = (a: PanelShape, b: PanelShape): boolean =>
  Math.abs(a.length - b.length) < ALIKE &&
  [0.5, 1].every((share) =>
    [0, 1].every((side) => {
      const [one, other] = [a, b].map((shape) => pointOnLevel(shape, share * shape.length, side));
      return Math.hypot((one?.x ?? 0) - (other?.x ?? 0), (one?.y ?? 0) - (other?.y ?? 0)) < ALIKE;
    }),
  );

/** Where a row lies on the panels of a kind; undefined where none of them carries it. */
export const lineOn = ({ panels }: PanelKind, { lines }: Row): RowLine | undefined =>
  lines.find(({ panel, lower }) => lower.length > 0 && panels.includes(panel));
