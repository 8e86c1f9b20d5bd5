import { titleOf, type SkirtPlan, type Speaker } from '@ribbonwright/engine';

/** One thing that can be told of two skirts. */
export interface Told {
  readonly label: string;
  readonly one: string;
  readonly other: string;
}

/** What is told of one skirt, in the order of the job; both skirts have the same labels. */
function told(plan: SkirtPlan, speaker: Speaker): readonly (readonly [label: string, value: string])[] {
  const { request, skirt, ribbons, cloth, supplies, sewing } = plan;
  const { words, value } = speaker;
  const { table, papers } = words;
  const unpriced =
    supplies.unpriced > 0 ? ` (${speaker.text(papers.unpriced, { count: supplies.unpriced })})` : '';
  const isPriced = supplies.items.some(({ price }) => price !== null);
  return [
    [table.skirtCalled, titleOf({ plan, speaker })],
    [table.whoFor, request.wearer],
    [table.cutKind, words.cuts[request.cut.kind]],
    [speaker.name(skirt.finishedLength), value(skirt.finishedLength)],
    [table.hemRoundName, value(skirt.hemRound)],
    [table.rowsOfRibbon, speaker.number(ribbons.rows.length)],
    [
      table.ribbonTotals,
      supplies.ribbons
        .map(({ colour, width, total }) => `${speaker.colour(colour)} ${value(width)} · ${value(total)}`)
        .join('\n'),
    ],
    [table.cloth, [request.cloth.name, speaker.colour(request.cloth.colour)].filter(Boolean).join(', ')],
    [table.clothToBuy, value(cloth.chosen.toBuy)],
    [table.costInAll, isPriced ? `${speaker.money(supplies.total)}${unpriced}` : ''],
    [speaker.name(sewing.hands), value(sewing.hands)],
  ];
}

/** Two skirts in plain words. Nothing is ranked: in which way they differ, or that they do not. */
export function compared(
  one: SkirtPlan,
  other: SkirtPlan,
  speaker: Speaker,
): { readonly differing: readonly Told[]; readonly same: readonly Told[] } {
  const others = told(other, speaker);
  const all = told(one, speaker).map(([label, text], i) => ({
    label,
    one: text,
    other: others[i]?.[1] ?? '',
  }));
  const filled = all.filter((each) => each.one !== '' || each.other !== '');
  return {
    differing: filled.filter((each) => each.one !== each.other),
    same: filled.filter((each) => each.one === each.other),
  };
}
