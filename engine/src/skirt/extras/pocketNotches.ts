import { point, pointAt, reversed, tangentAt } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Draft } from '../cuts/index.ts';
import type { Notch, Panel, Panels, PanelShape, Round, Rounds } from '../panel.ts';
import type { Pockets } from './extra.ts';
import { seamAt } from './seamsOf.ts';

type Drawn = Pick<Draft, 'rounds' | 'panels'>;

/** The panels with both ends of every pocket's opening notched: single, as on the bag, for all four edges meet there. */
export function withPocketNotches(draft: Draft, pockets: Pockets | null): Drawn {
  const { rounds } = draft;
  if (!pockets) return { rounds, panels: draft.panels };
  const [first, ...others] = rounds;
  const seams = pockets.sides.map((side) => seamAt(draft, first, side)).filter((each) => each !== null);
  const downs = [pockets.below.value, mm(pockets.below.value + pockets.opening.value)];
  const notched = (panel: Panel): Panel => {
    const added = seams.flatMap(({ before, after }) => [
      ...(panel === before ? downs.map((down) => notchAt(panel.shape, 'right', down)) : []),
      ...(panel === after ? downs.map((down) => notchAt(panel.shape, 'left', down)) : []),
    ]);
    const { shape } = panel;
    return added.length === 0
      ? panel
      : { ...panel, shape: { ...shape, notches: [...shape.notches, ...added] } };
  };
  const [one, ...more] = first.panels;
  const panels: Panels = [notched(one), ...more.map(notched)];
  const round: Round = { ...first, panels };
  const drawn: Rounds = [round, ...others];
  return { rounds: drawn, panels: [...panels, ...others.flatMap((each) => each.panels)] };
}

/** On the raw edge, so far down the finished side from the top line. */
function notchAt(shape: PanelShape, side: 'left' | 'right', down: Mm): Notch {
  const edge = shape.edges.find(({ name }) => name === side);
  // Edges run clockwise, so the left one from the bottom up.
  const finished = side === 'left' ? reversed(edge?.finished ?? []) : (edge?.finished ?? []);
  const at = pointAt(finished, down);
  const along = tangentAt(finished, down);
  const inward = side === 'right' ? point(-along.y, along.x) : point(along.y, -along.x);
  const allowance = edge?.allowance ?? 0;
  return {
    at: point(at.x - allowance * inward.x, at.y - allowance * inward.y),
    inward,
    use: 'pocket',
    lines: 1,
  };
}
