import type { Figure, Notice } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { WrapWidths } from './wrapWidths.ts';

/**
 * In a step the hem opens by what the step needs less what goes round without the overlap. Where that is more than the overlap at
 * the hem, the wrap parts; an overlap and a hem that would do are told, each by itself.
 */
export function overlapNotices(
  { stride, mark }: DraftContext,
  { closed: round, overlap: atWaist }: WrapWidths,
  flat: Figure<Mm>,
  hem: Figure<Mm>,
): Notice[] {
  const need = stride.everyday;
  if (!need || hem.value >= need.value) return [];
  const overlap = figure.length(mm((atWaist.value * hem.value) / flat.value), 'skirt.overlapAtHem', {
    overlap: atWaist,
    hem,
    flat,
  });
  const opens = figure.length(mm(need.value - hem.value + overlap.value), 'skirt.opensBy', {
    need,
    hem,
    overlap,
  });
  // The same flare with more overlap: hem and top grow alike.
  const exact = mm((need.value * flat.value) / hem.value - round.value);
  const more = figure.length(
    roundTo(exact, mark, 'up'),
    'skirt.overlapMore',
    { need, flat, hem, round },
    { exact },
  );
  const wider = figure.length(
    roundTo(need.value, mark, 'up'),
    'skirt.wrapWider',
    { need },
    { exact: need.value },
  );
  return [caution('skirt.overlapOpens', { opens, overlap, more, wider })];
}
