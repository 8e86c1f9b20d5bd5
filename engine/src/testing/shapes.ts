import { sewn, turned } from '../skirt/cuts/edges.ts';
import { ringOf, ringShape } from '../skirt/cuts/ringShape.ts';
import { straightShape } from '../skirt/cuts/straightShape.ts';
import type { PanelShape } from '../skirt/index.ts';
import type { Mm } from '../units/index.ts';

/** A panel by its marks: half widths raw side to centre, a turned casing, a turned hem, two seams alike. */
export interface Marked {
  readonly halfTop: Mm;
  readonly halfHem: Mm;
  readonly length: Mm;
  readonly topAllowance: Mm;
  readonly hemAllowance: Mm;
  readonly margin: Mm;
  readonly sideSeam: Mm;
}

const beyond = ({ topAllowance, hemAllowance, sideSeam }: Marked) => ({
  top: turned(topAllowance),
  hem: turned(hemAllowance),
  left: sewn(sideSeam),
  right: sewn(sideSeam),
});

export const straightBy = (marked: Marked): PanelShape => straightShape({ ...marked, ...beyond(marked) });

export const ringBy = (marked: Marked): PanelShape =>
  ringShape({ ...marked, ...beyond(marked), ...ringOf(marked.halfTop, marked.halfHem, marked.length) });
