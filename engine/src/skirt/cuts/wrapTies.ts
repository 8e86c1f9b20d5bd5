import type { Figure } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Part } from '../panel.ts';
import { stripPart } from '../waists/strip.ts';
import { work, type Work } from '../works.ts';

/** What a bow takes of a tie. Common practice, no source. */
const BOW = { inches: inches(15), metric: mm(400) } as const;
const TIES = 2;

/** Two ties, one at each end of the waist; each goes round once, the under one through a gap at the side, and they bow. */
export function tiesOf(
  context: DraftContext,
  chosen: { readonly tieLength?: Mm | undefined; readonly tieWidth: Mm },
  seam: Figure<Mm>,
): { readonly parts: readonly Part[]; readonly works: readonly Work[] } {
  const { mark, clothWidth } = context;
  const long = lengthOf(context, chosen.tieLength);
  const width = figure.length(chosen.tieWidth, 'skirt.tieWidth');
  const exact = mm(2 * (width.value + seam.value));
  const cut = figure.length(roundTo(exact, mark, 'up'), 'skirt.tieCut', { width, seam }, { exact });
  const strip = stripPart({
    name: 'tie',
    cloth: 'skirt',
    long,
    width: cut,
    seam,
    longest: clothWidth.value,
    mark,
    grain: 'either',
    matches: [],
  });
  const joins = TIES * (strip.count - 1);
  // The long edge and one end; the other end goes into the waist.
  const line = figure.length(mm(long.value + width.value), 'skirt.tieLine', { long, width });
  return {
    parts: [{ ...strip, count: TIES * strip.count }],
    works: [
      ...(joins > 0 ? [work('strip join', figure.length(cut.value, 'skirt.tieJoin', { cut }), joins)] : []),
      work('tie', line, TIES),
    ],
  };
}

function lengthOf({ body, mark }: DraftContext, asked: Mm | undefined): Figure<Mm> {
  if (asked !== undefined) return figure.length(asked, 'skirt.tieAsked');
  const { waist } = body;
  // Inch marks are no whole number of millimetres.
  const bow = figure.length(Number.isInteger(mark) ? BOW.metric : BOW.inches, 'skirt.tieBow');
  const exact = mm(waist.value + bow.value);
  return figure.length(roundTo(exact, mark, 'up'), 'skirt.tieLength', { waist, bow }, { exact });
}
