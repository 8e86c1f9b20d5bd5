import type { LaidPiece, Lay } from '../../cloth/index.ts';
import { boundsOf, point, type Bounds, type Path } from '../../geometry/index.ts';
import { mm, radians } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { label, type Ink, type Mark } from '../drawing/index.ts';

/** What stands on each piece: its name, and its number where there are several of that name. */
export function namesIn(lay: Lay, speaker: Speaker): (piece: LaidPiece) => string {
  const { panels, parts } = speaker.words;
  const all = [lay.table, ...lay.more].flatMap(({ pieces }) => pieces);
  const several = (names: readonly string[]): ReadonlySet<string> =>
    new Set(names.filter((name, i) => names.indexOf(name) !== i));
  const panelNames = several(all.flatMap((each) => each.panels.map(({ name }) => name)));
  const partNames = several(all.flatMap((each) => each.parts.map(({ name }) => name)));
  const numbered = (name: string, number: number, isNumbered: boolean): string =>
    isNumbered ? `${name} ${String(number)}` : name;
  return (piece) => {
    const listed = [
      // A whole width is a numbered thing even where there is but one.
      ...piece.panels.map(({ name, number }) => ({
        word: panels[name],
        number,
        isNumbered: name === 'width' || panelNames.has(name),
      })),
      ...piece.parts.map(({ name, number }) => ({
        word: parts[name],
        number,
        isNumbered: partNames.has(name),
      })),
    ];
    const [first, ...others] = listed;
    if (!first) return '';
    // Two of one name through two layers: the name once, both numbers.
    return others.every(({ word }) => word === first.word) && first.isNumbered
      ? `${first.word} ${listed.map(({ number }) => String(number)).join(' + ')}`
      : listed.map(({ word, number, isNumbered }) => numbered(word, number, isNumbered)).join(' + ');
  };
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
