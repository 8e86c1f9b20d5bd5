import { mm, type Mm } from '../../units/index.ts';
import type { Bench } from '../bench.ts';
import { figure } from '../codes.ts';
import { say, type Sentence } from '../sentence.ts';

const PLACES = ['front', 'back', 'left', 'right'] as const;

/** Whether the top edge is level all round. */
export const isLevel = ({ body }: Pick<Bench, 'body'>): boolean =>
  PLACES.every((place) => body.rises[place].value === 0);

/** Where something is raised, there must be cloth for it before anything is measured. */
export function risenRoom({ body: { rises } }: Bench): Sentence[] {
  const most = mm(Math.max(...PLACES.map((place) => rises[place].value)));
  return most > 0 ? [say('mark.riseRoom', { room: figure.length(most, 'sewing.riseRoom') })] : [];
}

/** What is unlike about front, back and sides is made at the top; the hem stays level. */
export function risenTop({ body: { rises }, skirt }: Bench): Sentence[] {
  const at = PLACES.map((place) => ({ place, rise: rises[place] })).filter(({ rise }) => rise.value !== 0);
  if (at.length === 0) return [];
  const low = (value: Mm) => figure.length(mm(-value), 'sewing.lowered');
  return [
    ...at.map(({ place, rise }) =>
      rise.value > 0
        ? say('mark.raised', { place, by: rise })
        : say('mark.lowered', { place, by: low(rise.value) }),
    ),
    say('mark.riseJoin'),
    ...(skirt.rounds.length > 1 ? [say('mark.riseTopTier')] : []),
  ];
}
