import { arc, type Arc } from '../../geometry/index.ts';
import { radians } from '../../units/index.ts';

/** An arc as equal arcs of at most `most` radians each, in order. */
export function arcPieces(of: Arc, most: number): readonly Arc[] {
  const count = Math.max(1, Math.ceil(Math.abs(of.sweep) / most));
  return Array.from({ length: count }, (_, i) =>
    arc(of.centre, of.radius, radians(of.start + (of.sweep * i) / count), radians(of.sweep / count)),
  );
}
