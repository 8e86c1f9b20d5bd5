import {
  called,
  clothOf,
  pieceNames,
  type ClothOptions,
  type ClothPiece,
  type SkirtCloth,
} from '../../cloth/index.ts';
import { point } from '../../geometry/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { inks, label, rectangle, type Ink, type Mark } from '../drawing/index.ts';
import { mixed } from './chalkOn.ts';

type Cut = Pick<SkirtPlan, 'cloths'>;

/** A piece in its cloth's own colour, for the screen. */
export const inkOf = ({ cloths }: Cut, piece: ClothPiece): Ink => clothOf(cloths, piece).options.colour.hex;

/** How much of its colour another cloth has on paper: words and chalk on it are still read. */
const TINGE = 0.38;

/** A piece on paper: the wash of the skirt's own cloth, or a tinge of another cloth's colour. */
export const washOf = ({ cloths }: Cut, piece: ClothPiece): Ink => washOfCloth(clothOf(cloths, piece));

export const washOfCloth = ({ which, options }: SkirtCloth): Ink =>
  which === 'own' ? inks.wash : mixed(inks.paper, options.colour.hex, TINGE);

/** What a cloth is called: its name and colour. */
export const clothCalled = (
  { options }: { readonly options: Pick<ClothOptions, 'name' | 'colour'> },
  speaker: Speaker,
): string => speaker.text(speaker.words.papers.clothCalled, called(options));

/** The cloth of a piece by what it is called, where the skirt has several; empty where it has one. */
export const clothNamed = ({ cloths }: Cut, piece: ClothPiece, speaker: Speaker): string =>
  cloths.length > 1 ? clothCalled(clothOf(cloths, piece), speaker) : '';

/** Each cloth of a skirt of several, in its own colour, with what is cut from it in words; none for a skirt of one. */
export const clothSwatches = (
  { cloths, skirt }: Pick<SkirtPlan, 'cloths' | 'skirt'>,
  speaker: Speaker,
): readonly { readonly ink: Ink; readonly called: string; readonly pieces: string }[] =>
  cloths.length === 1
    ? []
    : cloths.map((cloth) => ({
        ink: cloth.options.colour.hex,
        called: clothCalled(cloth, speaker),
        pieces: speaker.pieces(pieceNames(skirt, cloth)),
      }));

const LETTER = 0.52;

/** Which fill is which cloth, in lines from a place down. `size` is the em of its words. */
export function clothLegend(
  cloths: readonly SkirtCloth[],
  speaker: Speaker,
  { left, top, room, size }: { left: number; top: number; room: number; size: Mm },
): { readonly marks: readonly Mark[]; readonly height: number } {
  if (cloths.length === 0) return { marks: [], height: 0 };
  const line = size * 1.5;
  let [x, y] = [left, top];
  const marks = cloths.flatMap((cloth): Mark[] => {
    const text = clothCalled(cloth, speaker);
    const wide = size * 1.9 + LETTER * size * text.length;
    if (x > left && x + wide > left + room) [x, y] = [left, y + line];
    const at = point(x, y + line / 2);
    x += wide + size * 1.4;
    return [
      rectangle(at.x, at.y - size / 2, size * 1.4, size, { fill: washOfCloth(cloth), width: mm(0.25) }),
      label(point(at.x + size * 1.9, at.y), text, { size, baseline: 'middle' }),
    ];
  });
  return { marks, height: y + line - top };
}
