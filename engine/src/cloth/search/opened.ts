import { boundsOf, halfTurn, mirrorX, point, translate, type Path } from '../../geometry/index.ts';
import type { Table } from '../lays/table.ts';

type Folded = Pick<Table, 'layers' | 'along' | 'across' | 'bottom' | 'right'>;

const flippedOver = (path: Path, y: number): Path => {
  const { left, right } = boundsOf(path);
  const middle = (left + right) / 2;
  return halfTurn(mirrorX(path, middle), point(middle, y));
};

/** Where an outline on a folded table lies on each of its layers, once the cloth is opened out. */
export function onEachLayer(outline: Path, { layers, along, across, bottom, right }: Folded): Path[] {
  if (layers === 1) return [outline];
  if (layers === 4) {
    // The edge with two folds is a quarter and three quarters of the way along.
    const over = mirrorX(outline, along / 2);
    return [
      over,
      translate(outline, along, 0),
      translate(over, 2 * along, 0),
      translate(outline, 3 * along, 0),
    ];
  }
  if (bottom === 'fold') return [outline, flippedOver(outline, across)];
  return right === 'fold' ? [outline, mirrorX(outline, along)] : [outline];
}

/** Length of a table that is opened out. */
export const openedAlong = ({ layers, along, right }: Folded): number =>
  along * (layers === 4 ? 4 : right === 'fold' ? 2 : 1);
