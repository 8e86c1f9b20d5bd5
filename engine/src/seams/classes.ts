import type { WorkName } from '../skirt/index.ts';
import type { SeamClass, StitchClass } from './line.ts';

interface Class {
  readonly stitch: StitchClass;
  readonly seam: SeamClass;
  /** Raw edges of it that are kept from fraying: two pressed open, one where both are finished together. */
  readonly rawEdges: 0 | 1 | 2;
}

const straight = (seam: SeamClass, rawEdges: Class['rawEdges'] = 0): Class => ({
  stitch: '301',
  seam,
  rawEdges,
});
const zigzag = (seam: SeamClass): Class => ({ stitch: '304', seam, rawEdges: 0 });

/** Stitch and seam class of each kind of work: mapping of the project's own onto ISO 4915 and ISO 4916. */
export const classes: Readonly<Record<WorkName, Class>> = {
  'side seam': straight(1, 2),
  'gore seam': straight(1, 2),
  'strip join': straight(1, 2),
  'gathering rows': straight(5),
  'tier seam': straight(1, 1),
  facing: straight(6),
  casing: straight(6),
  'casing seam': straight(1, 1),
  'casing join': straight(1),
  'band seam': straight(1),
  'band fold': straight(6),
  'band ends': straight(1),
  dart: straight(1),
  placket: straight(6),
  zip: straight(7),
  buttonhole: zigzag(6),
  button: zigzag(7),
  tie: straight(6),
  'elastic join': zigzag(1),
  'elastic catch': straight(1),
  'cord eyelet': zigzag(6),
  'cord catch': straight(1),
  'pocket seam': straight(1, 1),
  'pocket bag': straight(1, 1),
  'slit edge': straight(6),
  tuck: straight(5),
  'lining seam': straight(1, 2),
  'lining hem': straight(6),
  'lining top': straight(1),
};
