import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import { alongHem } from '../alongHem.ts';
import type { Draft } from '../cuts/index.ts';
import type { Panel } from '../panel.ts';

/** Below this two rounds are one to the eye. */
const SEEN = 2;

/** Round of the panels at a height above their lower line, seam to seam. */
const measuredAt = (panels: readonly Panel[], fromHem: Mm): Mm =>
  mm(
    panels.reduce((sum, { shape }) => {
      const finished = shape.edges.flatMap((edge) => edge.finished);
      return sum + lengthOf(alongHem(shape, fromHem, finished));
    }, 0),
  );

/**
 * Round of the skirt `down` from the panels' top line: on a straight line from the top of its round of panels to the bottom. In a
 * skirt of tiers what hangs below a seam is wider than the seam, so that the seam counts.
 */
export function roundAt(draft: Draft, down: Mm): Figure<Mm> {
  let above = 0;
  let narrowest: Figure<Mm> | null = null;
  for (const [i, { bottom, length, ...round }] of draft.rounds.entries()) {
    const top = i === 0 ? draft.opening : round.top;
    const last = i === draft.rounds.length - 1;
    if (down <= above + length || last) {
      const level = mm(Math.min(length, Math.max(0, down - above)));
      const value = mm(top.value + (length > 0 ? ((bottom.value - top.value) * level) / length : 0));
      if (narrowest && narrowest.value < value) return narrowest;
      const measured = measuredAt(round.panels, mm(length - level));
      // Sides that widen to the hips first hold more there than a straight line from top to hem says.
      if (measured > value + SEEN) return figure.length(measured, 'waist.roundMeasured');
      return figure.length(value, 'waist.roundAtHip', {
        top,
        bottom,
        level: figure.length(level, 'waist.hipLine'),
        length: figure.length(length, 'waist.roundLength'),
      });
    }
    above += length;
    if (!narrowest || bottom.value < narrowest.value) narrowest = bottom;
  }
  return draft.opening;
}
