import { layFound, type ClothPlan, type WhichCloth } from '../../cloth/index.ts';
import type { Notice } from '../../figure/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { laidFromShelf, type PlannedCloth, type PlannedSkirt } from '../../workshop/index.ts';
import type { PaperDocument } from '../drawing/index.ts';
import { card } from './card.ts';
import { classTitle, type ClassPaperInput } from './classLay.ts';

/**
 * A card for everybody's skirt, to chalk its curves and rows by, one after the other. What a skirt by itself would take of
 * its cloths is not on them: the class is laid together.
 */
export function classCards(input: ClassPaperInput): PaperDocument {
  const { shelf, speaker, fonts, date } = input;
  const { skirts } = input.plan;
  const cloths = [...laidFromShelf(input.plan, shelf), ...input.plan.cloths];
  const pages = skirts.flatMap((skirt) => {
    const plan = asInClass(skirt, cloths);
    return card({ plan, speaker, fonts, date, fromCloth: [], laid: null }, { cloth: false }).pages;
  });
  const { papers, workshop } = speaker.words;
  const paper = skirts.length > 1 ? workshop.classCards : papers.card;
  return { title: `${classTitle(input)} · ${paper}`, language: speaker.language, date, pages };
}

const onNoLayout: Notice = { level: 'problem', code: 'cloth.onNoLayout', params: {} };

/** A skirt of a class under its label there, its pieces lying as they lie there; that they lie nowhere is told. */
function asInClass(skirt: PlannedSkirt, cloths: readonly PlannedCloth[]): SkirtPlan {
  const { label, plan } = skirt;
  const layOf = (which: WhichCloth) =>
    cloths.find(({ shares }) => shares.some((each) => each.skirt === skirt && each.which === which))?.chosen;
  const shares = cloths.flatMap((cloth) => cloth.shares.filter((each) => each.skirt === skirt));
  const isLaid = shares.every(({ which }) => layOf(which)?.fits === true);
  const lying = (which: WhichCloth, before: ClothPlan): ClothPlan => {
    const found = layOf(which);
    if (!found?.fits) return before;
    const tables = found.tables.map((table) => ({
      ...table,
      pieces: table.pieces.filter(({ wearer }) => wearer === label),
    }));
    return { ...before, chosen: layFound({ ...found, tables }) };
  };
  return {
    ...plan,
    request: label === '' ? plan.request : { ...plan.request, name: '', wearer: label },
    cloth: lying('own', plan.cloth),
    lining: plan.lining && lying('lining', plan.lining),
    contrast: plan.contrast.map((each) => ({ ...each, cloth: lying(each.at, each.cloth) })),
    notices: [
      ...(isLaid ? [] : [{ stage: 'cloth' as const, notice: onNoLayout, of: null }]),
      ...plan.notices.filter(({ stage }) => stage !== 'cloth'),
    ],
  };
}
