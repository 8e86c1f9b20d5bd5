import type { RawRequest } from '../../testing/requests.ts';
import { contains, distanceTo, lengthOf, pointAt, type Path } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import type { Fabric, Lay } from '../index.ts';

/** Skirts that lie differently: straight and curved, two widths and more, a narrow and a wide bolt. */
export const skirts: Readonly<Record<string, RawRequest>> = {
  'the default skirt': {},
  'a curved skirt': { cut: { kind: 'flared', hemline: 'level' } },
  'a wide flare': { cut: { kind: 'flared', hemAtFold: '28 in' }, cloth: { width: '60 in' } },
  'a child’s skirt': { body: { waist: '22 in', hip: '23 in', waistToHem: '16 in', age: 6 } },
  'two widths, gathered': { cut: { kind: 'gathered', widths: 2 } },
  'three widths, gathered': { cut: { kind: 'gathered', widths: 3 } },
  'five widths, trimmed': { cut: { kind: 'gathered', widths: 5, wholeWidths: false, fullness: 2.5 } },
  'wide quilt backing': { cloth: { width: '108 in' } },
  'one width of quilt backing': { cut: { kind: 'gathered', widths: 1 }, cloth: { width: '108 in' } },
};

/** The part of the table where cloth may be cut, upper edge and lower edge: folds are no bound, selvages are. */
export function cuttable(lay: Lay, { selvage }: Fabric): { readonly top: number; readonly bottom: number } {
  const { across } = lay.table;
  const top = lay.kind === 'double fold' ? 0 : selvage.value;
  const bottom = lay.kind === 'lengthwise fold' ? across : across - selvage.value;
  return { top, bottom };
}

/** How deep any point on the way round `inner` lies within `outer`, looked at every few millimetres. */
export function deepestWithin(outer: Path, inner: Path): number {
  const round = lengthOf(inner);
  const steps = Math.ceil(round / 4);
  let deepest = 0;
  for (let i = 0; i < steps; i++) {
    const at = pointAt(inner, mm((i * round) / steps));
    if (contains(outer, at)) deepest = Math.max(deepest, distanceTo(outer, at));
  }
  return deepest;
}
