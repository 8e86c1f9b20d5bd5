import type { Figure } from '../figure/index.ts';
import type { Composition } from '../ribbon/index.ts';
import type { Skirt, Work } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { classes } from './classes.ts';
import { figure } from './codes.ts';
import type { StitchLine } from './line.ts';
import type { EdgeFinish } from './options.ts';

/** Every line of stitching in the skirt: ribbons, the works of cut, waist and extras, raw edges, hem. */
export function seamLines(skirt: Skirt, ribbons: Composition, finish: EdgeFinish): StitchLine[] {
  return [
    ...ribbonLines(ribbons),
    ...skirt.works.map(workLine),
    ...edgeLines(skirt.works, finish),
    plain({
      name: 'hem',
      stitch: '301',
      seam: 6,
      length: figure.length(skirt.hemRound.value, 'seams.round', { round: skirt.hemRound }),
      starts: 1,
    }),
  ];
}

const plain = (line: Omit<StitchLine, 'top'>): StitchLine => ({ ...line, top: null });

const workLine = ({ name, count, each }: Work): StitchLine =>
  plain({ name, ...classOf(name), length: times(count, each), starts: count });

const classOf = (name: Work['name']) => {
  const { stitch, seam } = classes[name];
  return { stitch, seam };
};

const times = (count: number, each: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(count * each.value), 'seams.edges', { count: figure.count(count, 'seams.count'), each });

/** Raw edges that would fray, overlocked or zigzagged. */
const edgeLines = (works: readonly Work[], finish: EdgeFinish): StitchLine[] =>
  works.flatMap(({ name, count, each }) => {
    const edges = classes[name].rawEdges * count;
    const stitch = finish === 'overlocker' ? '504' : '304';
    return edges === 0
      ? []
      : [plain({ name: 'edge finish', stitch, seam: 6, length: times(edges, each), starts: edges })];
  });

/** Each strip is stitched along both edges, in its own colour. */
function ribbonLines(ribbons: Composition): StitchLine[] {
  return ribbons.rows.map((row) => {
    const strips = mm(row.strips.reduce((sum, strip) => sum + strip.length.value, 0));
    const edges = figure.count(2, 'seams.count');
    return {
      name: 'ribbon edge',
      stitch: '301',
      seam: 7,
      length: figure.length(mm(2 * strips), 'seams.ribbonEdge', {
        edges,
        strips: figure.length(strips, 'seams.total'),
      }),
      starts: 2 * row.strips.length,
      top: row.colour,
    };
  });
}
