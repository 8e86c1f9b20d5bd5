import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Around, Panels, PanelShape, Round, Rounds } from '../panel.ts';

/** `count` equal panels side by side, the first in the middle of the front. */
export function aroundInTurn(count: number): readonly [Around, ...Around[]] {
  const at = (i: number): Around => ({ from: (i - 0.5) / count, to: (i + 0.5) / count });
  return [at(0), ...Array.from({ length: Math.max(0, count - 1) }, (_, i) => at(i + 1))];
}

interface Closing {
  readonly length: Figure<Mm>;
  readonly top: Figure<Mm>;
  readonly bottom: Figure<Mm>;
  readonly seams: number;
}

/** A skirt that is one round from its waist to its hem. */
export function oneRound(panels: Panels, { length, top, bottom, seams }: Closing) {
  const round: Round = { panels, fromHem: mm(0), length: length.value, top, bottom, seams };
  const rounds: Rounds = [round];
  return { rounds, panels, sideSeams: seams };
}

/** Raw edge to raw edge along one side: the seam runs through hem and casing before they are turned. */
export function seamSide(shape: PanelShape, casing: Figure<Mm>, hem: Figure<Mm>): Figure<Mm> {
  const finished = shape.edges.find(({ name }) => name === 'right')?.finished ?? [];
  const sewn = figure.length(lengthOf(finished), 'skirt.seamLine');
  return figure.length(mm(sewn.value + casing.value + hem.value), 'skirt.seamSide', { sewn, casing, hem });
}
