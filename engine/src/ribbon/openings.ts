import type { Notice } from '../figure/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { caution, figure } from './codes.ts';
import type { Row } from './row.ts';

/** Rows that meet a pocket's opening would close it; rows that meet a slit end there instead of in a seam. */
export function openingNotices({ extras: { pockets, slits } }: Skirt, rows: readonly Row[]): Notice[] {
  const meeting = (takes: { readonly from: number; readonly to: number }): readonly Row[] =>
    rows.filter(({ fromHem, width }) => fromHem.value < takes.to && fromHem.value + width.value > takes.from);
  const notices: Notice[] = [];
  const [overPocket, ...others] = pockets ? meeting(pockets.takes) : [];
  if (pockets && overPocket)
    notices.push(
      caution('ribbon.rowAcrossPocket', {
        row: overPocket.number,
        rows: others.length + 1,
        from: figure.length(pockets.takes.from, 'ribbon.openingFrom'),
        to: figure.length(pockets.takes.to, 'ribbon.openingTo'),
      }),
    );
  const besideSlit = slits ? meeting(slits.takes) : [];
  if (slits && besideSlit.length > 0)
    notices.push(
      caution('ribbon.rowAcrossSlit', {
        rows: besideSlit.length,
        to: figure.length(slits.takes.to, 'ribbon.slitTo'),
      }),
    );
  return notices;
}
