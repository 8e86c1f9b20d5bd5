import type { Figure } from '../figure/index.ts';
import type { Composition, Row } from '../ribbon/index.ts';
import type { Panel, Skirt, Work } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { classes } from './classes.ts';
import { figure } from './codes.ts';
import type { StitchLine, Through } from './line.ts';
import type { EdgeFinish } from './options.ts';
import { sewnBy, sewnByHem } from './through.ts';

/** Every line of stitching in the skirt: ribbons, the works of cut, waist and extras, raw edges, hem. */
export function seamLines(skirt: Skirt, ribbons: Composition, finish: EdgeFinish): StitchLine[] {
  return [
    ...ribbonLines(ribbons),
    ...skirt.works.map((work) => workLine(skirt, work)),
    ...edgeLines(skirt, finish),
    plain({
      name: 'hem',
      stitch: '301',
      seam: 6,
      length: figure.length(skirt.hemRound.value, 'seams.round', { round: skirt.hemRound }),
      starts: 1,
      through: [{ pieces: sewnByHem(skirt), length: skirt.hemRound.value, starts: 1 }],
    }),
  ];
}

const plain = (line: Omit<StitchLine, 'top'>): StitchLine => ({ ...line, top: null });

const workLine = (skirt: Skirt, work: Work): StitchLine =>
  plain({
    name: work.name,
    ...classOf(work.name),
    length: times(work.count, work.each),
    starts: work.count,
    through: throughOf(skirt, work, work.count),
  });

/** As many lines of a work, shared among what they go through. */
function throughOf(skirt: Skirt, work: Work, lines: number): Through[] {
  const each = sewnBy(skirt, work);
  const share = lines / Math.max(1, each.length);
  return each.map((pieces) => ({ pieces, length: mm(share * work.each.value), starts: share }));
}

const classOf = (name: Work['name']) => {
  const { stitch, seam } = classes[name];
  return { stitch, seam };
};

const times = (count: number, each: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(count * each.value), 'seams.edges', { count: figure.count(count, 'seams.count'), each });

/** Raw edges that would fray, overlocked or zigzagged. */
const edgeLines = (skirt: Skirt, finish: EdgeFinish): StitchLine[] =>
  skirt.works.flatMap((work) => {
    const edges = classes[work.name].rawEdges * work.count;
    const stitch = finish === 'overlocker' ? '504' : '304';
    if (edges === 0) return [];
    const length = times(edges, work.each);
    const through = throughOf(skirt, work, edges);
    return [plain({ name: 'edge finish', stitch, seam: 6, length, starts: edges, through })];
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
      through: row.strips.map((strip) => ({
        pieces: panelsUnder(row, strip),
        length: mm(2 * strip.length.value),
        starts: 2,
      })),
    };
  });
}

/** A strip lies on one panel, or goes round on all that carry its row. */
const panelsUnder = ({ lines }: Row, { panel, number }: Row['strips'][number]): readonly Panel[] => {
  const all = lines.map((line) => line.panel);
  const own = all.filter((each) => each.name === panel && each.number === number);
  return own.length > 0 ? own : all;
};
