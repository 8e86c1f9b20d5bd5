import type { Row, RowLine } from '../../../ribbon/index.ts';
import type { Panel, PanelShape } from '../../../skirt/index.ts';
import { clothOf } from '../../../cloth/index.ts';
import { pointOnLevel } from './chalked.ts';
import type { Panelled } from './groups.ts';

/** Panels of one round that are alike where rows lie, or mirror one another, whatever their notches and the rise of their tops; of one cloth. */
export interface PanelKind {
  /** From the top, from 1. */
  readonly round: number;
  readonly panels: readonly [Panel, ...Panel[]];
}

/** The kinds of panels of a skirt: those of its one round, or of tiers the first of each. */
export function panelKinds({ skirt: { rounds }, cloths }: Panelled): PanelKind[] {
  return rounds.flatMap(({ panels }, i) => {
    const kinds: [Panel, ...Panel[]][] = [];
    for (const panel of panels) {
      const kind = kinds.find(
        ([first]) =>
          clothOf(cloths, first) === clothOf(cloths, panel) &&
          (first.shape === panel.shape || sameBelow(first.shape, panel.shape)),
      );
      if (kind) kind.push(panel);
      else kinds.push([panel]);
    }
    const shown = rounds.length > 1 ? kinds.slice(0, 1) : kinds;
    return shown.map((members) => ({ round: i + 1, panels: members }));
  });
}

const ALIKE = 0.05;

/** Whether two panels, one of them turned over perhaps, are of one length and as wide half-way down and at the hem. */
const sameBelow = (a: PanelShape, b: PanelShape): boolean =>
  Math.abs(a.length - b.length) < ALIKE &&
  ([1, -1] as const).some((turned) =>
    [0.5, 1].every((share) =>
      [0, 1].every((side) => {
        const one = pointOnLevel(a, share * a.length, side);
        const other = pointOnLevel(b, share * b.length, turned === 1 ? side : 1 - side);
        return Math.hypot(one.x - turned * other.x, one.y - other.y) < ALIKE;
      }),
    ),
  );

/** Where a row lies on the first panel of a kind that carries it; undefined where none of them does. */
export function lineOn({ panels }: PanelKind, { lines }: Row): RowLine | undefined {
  const carrying = lines.filter(({ panel, lower }) => lower.length > 0 && panels.includes(panel));
  return carrying.find(({ panel }) => panel === panels[0]) ?? carrying[0];
}
