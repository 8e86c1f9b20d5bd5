import { point, type Point } from '../../../geometry/index.ts';
import { mm, type Mm } from '../../../units/index.ts';
import { dimension, inks, label, straight, type Ink, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../cloth.ts';

/** Em of every word in a step's drawing: 9 pt, read at arm's length. */
const EM = mm(3.2);
const LEADING = 1.15;

/** Widest a letter of each kind is in a plain face, of the em: drawings know no font, so words are kept well inside. */
function shareOf(letter: string): number {
  if (/[iljtfrI.,:;’'()| \u00a0]/.test(letter)) return 0.34;
  if (/[mwMWÀ-ÞA-Z½¼¾⅛⅜⅝⅞%]/.test(letter)) return 0.72;
  return 0.54;
}

const widthGuess = (text: string, em: number = EM): number =>
  Array.from(text).reduce((sum, letter) => sum + shareOf(letter), 0) * em;

function lines(text: string, room: number, em: number): string[] {
  const found: string[] = [];
  for (const word of text.split(' ')) {
    const last = found.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && widthGuess(longer, em) <= room) found[found.length - 1] = longer;
    else found.push(word);
  }
  return found;
}

interface NoteLook {
  /** Width to break lines at. */
  readonly room?: number;
  readonly align?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly halo?: Ink;
  readonly size?: Mm;
}

/** Words about a point, broken into as many lines as `room` asks for; `at` is level with their middle. */
export function note(at: Point, text: string, look: NoteLook = {}): Mark[] {
  const size = look.size ?? EM;
  const parts = lines(text, look.room ?? Infinity, size);
  const step = size * LEADING;
  return parts.map((part, i) =>
    label(point(at.x, at.y + (i - (parts.length - 1) / 2) * step), part, {
      size,
      align: look.align ?? 'middle',
      baseline: 'middle',
      bold: look.bold ?? false,
      ink: look.ink ?? inks.ink,
      halo: look.halo ?? inks.paper,
    }),
  );
}

/** A quantity: what it is called, and below it its number. `at` lies between the two. */
export function named(at: Point, name: string, value: string, look: NoteLook = {}): Mark[] {
  const size = look.size ?? EM;
  const tall = lines(name, look.room ?? Infinity, size).length * size * LEADING;
  return [
    ...note(point(at.x, at.y - tall / 2), name, { ...look, ink: look.ink ?? inks.grey }),
    ...note(point(at.x, at.y + (size * LEADING) / 2), value, { ...look, bold: true, ink: inks.ink }),
  ];
}

/** A measure with its heads; `offset` as in `dimension`. */
export const measured = (from: Point, to: Point, text: string, offset: number): Mark =>
  dimension({ from, to, text, offset: mm(offset), size: EM, ink: inks.ink });

/** Words with a thin line to what they speak of. */
export function pointed(
  at: Point,
  to: Point,
  text: string,
  align: 'start' | 'end',
  look: NoteLook = {},
): Mark[] {
  const gap = align === 'start' ? -1 : 1;
  return [straight(point(at.x + gap, at.y), to, thinLine), ...note(at, text, { ...look, align })];
}
