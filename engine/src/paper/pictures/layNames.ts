import type { LaidPiece, PartLabel } from '../../cloth/index.ts';
import { boundsOf, point, type Bounds, type Path } from '../../geometry/index.ts';
import type { Panel, PartName, Skirt } from '../../skirt/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { label, type Ink, type Mark } from '../drawing/index.ts';

/** What stands on each piece of a skirt. */
export const namesOf = (
  { panels, parts }: Pick<Skirt, 'panels' | 'parts'>,
  speaker: Speaker,
): ((piece: Pick<LaidPiece, 'panels' | 'parts'>) => string) =>
  namesAmong(
    panels,
    parts.flatMap(({ name, count }) => Array.from({ length: count }, () => name)),
    speaker,
  );

/**
 * What a piece of one skirt is called among all that are cut for it: its name, and its number where there are several of
 * that name; of a tier's strip the tier first.
 */
function namesAmong(
  laid: readonly Panel[],
  partsLaid: readonly PartName[],
  speaker: Speaker,
): (piece: Pick<LaidPiece, 'panels' | 'parts'>) => string {
  const { panels, parts } = speaker.words;
  const several = <Name extends string>(names: readonly Name[]): ReadonlySet<Name> =>
    new Set(names.filter((name, i) => names.indexOf(name) !== i));
  const places = placesIn(laid);
  const hasRounds = [...places.values()].some(({ round }) => round > 1);
  const panelNames = several(laid.map(({ name }) => name));
  const partNames = several(partsLaid);
  const panelName = (panel: Panel): Named => {
    const { round, number } = places.get(placeKey(panel)) ?? { round: 1, number: panel.number };
    if (hasRounds)
      return { lead: String(round), number, say: (strips) => tierStrip(String(round), strips, speaker) };
    const lead = panels[panel.name];
    // A whole width is a numbered thing even where there is but one.
    const isNumbered = panel.name === 'width' || panelNames.has(panel.name);
    return { lead, number: isNumbered ? panel.number : null, say: (numbers) => `${lead} ${numbers}`.trim() };
  };
  const partName = ({ name, number }: PartLabel): Named => ({
    lead: parts[name],
    number: partNames.has(name) ? number : null,
    say: (numbers) => `${parts[name]} ${numbers}`.trim(),
  });
  return (piece) => {
    const listed = [...piece.panels.map(panelName), ...piece.parts.map(partName)];
    const [first, ...others] = listed;
    if (!first) return '';
    const numbersOf = ({ number }: Named): string => (number === null ? '' : String(number));
    // Two of one name through two layers: the name once, both numbers.
    return others.every(({ lead }) => lead === first.lead) && first.number !== null
      ? first.say(listed.map(numbersOf).join(' + '))
      : listed.map((each) => each.say(numbersOf(each))).join(' + ');
  };
}

interface Named {
  readonly lead: string;
  readonly number: number | null;
  readonly say: (numbers: string) => string;
}

const tierStrip = (tier: string, strips: string, { text, words: { papers } }: Speaker): string =>
  text(papers.tierStrip, { tier, strips });

interface Place {
  /** From the top, from 1. */
  readonly round: number;
  /** Within its round, from 1. */
  readonly number: number;
}

const placeKey = ({ name, number }: Panel): string => `${name} ${String(number)}`;

/** Panels of one name are numbered round by round: where their turns about the body begin anew, so does a round. */
function placesIn(panels: readonly Panel[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const name of new Set(panels.map((panel) => panel.name))) {
    let [round, number, last] = [1, 0, -Infinity];
    for (const panel of panels
      .filter((each) => each.name === name)
      .sort((one, other) => one.number - other.number)) {
      if (panel.around.from <= last) [round, number] = [round + 1, 0];
      number += 1;
      last = panel.around.from;
      places.set(placeKey(panel), { round, number });
    }
  }
  return places;
}

const USUAL = 3.4;
/** Smaller than this nobody reads it: a piece that is smaller still keeps a name of this size. */
const SMALLEST = 1.9;
/** Mean width of a letter, and height of a line, for each unit of size. */
const LETTER = 0.52;
const LINE = 1.15;

/**
 * A name in the middle of its piece: along it or down it, as large as fits. A name that is longer than its piece keeps
 * within the cloth; one that is longer than the cloth is left out.
 */
export function nameOn(outline: Path, name: string, cloth: Bounds, halo: Ink, ink: Ink): Mark[] {
  if (name === '') return [];
  const { left, top, width, height } = boundsOf(outline);
  const sizeIn = (long: number, short: number): number =>
    Math.min(USUAL, (long - 1) / (LETTER * name.length), (short - 0.4) / LINE);
  const [flat, upright] = [sizeIn(width, height), sizeIn(height, width)];
  const isUpright = flat < USUAL && upright > flat;
  const size = Math.max(SMALLEST, flat, upright);
  const reach = (LETTER * size * name.length) / 2;
  if (2 * reach > (isUpright ? cloth.height : cloth.width)) return [];
  const within = (at: number, least: number, most: number): number =>
    Math.min(most - reach, Math.max(least + reach, at));
  const middle = point(left + width / 2, top + height / 2);
  const at = isUpright
    ? point(middle.x, within(middle.y, cloth.top, cloth.bottom))
    : point(within(middle.x, cloth.left, cloth.right), middle.y);
  return [
    label(at, name, {
      size: mm(size),
      align: 'middle',
      baseline: 'middle',
      halo,
      ink,
      ...(isUpright ? { angle: radians(-Math.PI / 2) } : {}),
    }),
  ];
}
