import { patternKind, seamMeets, stripedFold, type FoundCloth, type FoundTable } from '../../cloth/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { isByEye, jobOf, type PlannedCloth } from '../../workshop/index.ts';
import { repeatsOn } from '../pictures/chalk/patternLines.ts';

/** Where the lines of the cloth's pattern lie on a table: the first of them, and how far it is to the next. */
export function patternTexts(table: FoundTable, lay: FoundCloth, speaker: Speaker): string[] {
  const { workshop, tableEdges } = speaker.words;
  const fabric = minded(lay);
  const kind = patternKind(fabric);
  const { across, along } = repeatsOn(table, fabric);
  const said = (text: string, { at, step }: NonNullable<typeof across>, edge: string): string =>
    speaker.text(text, { at: speaker.fineLength(mm(at)), step: speaker.fineLength(mm(step)), edge });
  return [
    ...(across ? [said(workshop.stripesAt, across, tableEdges[table.top])] : []),
    ...(along ? [said(workshop.bandsAt, along, tableEdges[table.left])] : []),
    ...(along && table.right === 'fold' ? [workshop.foldOnBand] : []),
    ...foldTexts(table, fabric, speaker),
    ...(kind && table.layers > 1 && (across || along)
      ? [speaker.text(workshop.patternFolded, { pattern: kind })]
      : []),
  ];
}

/** The cloth as a lay minds it: by hand its pattern falls as it does, and nobody knows where. */
export const minded = (lay: Pick<FoundCloth, 'fabric' | 'notices'>): FoundCloth['fabric'] =>
  isByEye(lay) ? { ...lay.fabric, pattern: null } : lay.fabric;

/** Where cloth with stripes is folded lengthwise. */
function foldTexts(table: FoundTable, fabric: FoundCloth['fabric'], speaker: Speaker): string[] {
  const fold = stripedFold(table, fabric);
  if (!fold) return [];
  return [
    speaker.text(speaker.words.workshop.stripesFolded, {
      on: fold.on,
      from: speaker.length(fold.from),
      isBeyond: fold.beyond > 0 ? 'yes' : 'no',
      beyond: speaker.length(fold.beyond),
    }),
  ];
}

/** How closely a pattern that has to meet does so at the stitching, read off the lay; nothing where none has to. */
export function meetsText(cloth: PlannedCloth, speaker: Speaker): string[] {
  const { tables, fabric, fits } = cloth.chosen;
  if (!fits || isByEye(cloth.chosen) || fabric.pattern?.match !== true) return [];
  // Where it does not meet is said by name.
  const seams = seamMeets({ tables, fabric }, jobOf(cloth).wanted).filter(({ meets }) => meets);
  if (seams.length === 0) return [];
  const { workshop } = speaker.words;
  const whole = seams.filter((seam) => seam.whole).length;
  const some = (text: string, count: number): string[] => (count > 0 ? [speaker.text(text, { count })] : []);
  const said = [...some(workshop.meetsWhole, whole), ...some(workshop.meetsNotch, seams.length - whole)];
  // Closer than a mark is not told by a tape.
  const marks = cloth.shares.map(({ skirt }) => skirt.plan.request.mark);
  const off = mm(Math.max(...marks, ...seams.map((seam) => seam.off.value)));
  return [speaker.text(workshop.patternMeets, { seams: said.join(', '), off: speaker.length(off) })];
}
