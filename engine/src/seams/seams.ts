import type { Figure } from '../figure/index.ts';
import { lengthOf } from '../geometry/index.ts';
import type { Composition } from '../ribbon/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { figure } from './codes.ts';
import type { StitchLine } from './line.ts';
import type { EdgeFinish } from './options.ts';

/** Times back and forth over the lapped elastic, and over each seam where it is caught. Common practice, no source. */
const JOIN_ROUNDS = 4;
const CATCH_ROUNDS = 2;

/** Every line of stitching in the skirt, in the order of sewing. */
export function seamLines(skirt: Skirt, ribbons: Composition, finish: EdgeFinish): StitchLine[] {
  const side = sideLength(skirt);
  const casingRound = skirt.opening;
  const lines: StitchLine[] = [
    ...ribbonLines(ribbons),
    plain('side seam', '301', 1, times(skirt.sideSeams, side), skirt.sideSeams),
    plain(
      'edge finish',
      finish === 'overlocker' ? '504' : '304',
      6,
      times(2 * skirt.sideSeams, side),
      2 * skirt.sideSeams,
    ),
    plain('hem', '301', 6, figure.length(skirt.hemRound.value, 'seams.round', { round: skirt.hemRound }), 1),
    plain(
      'casing',
      '301',
      6,
      figure.length(casingRound.value, 'seams.casingRound', { round: casingRound }),
      1,
    ),
  ];
  return [...lines, ...elasticLines(skirt)];
}

const plain = (
  name: StitchLine['name'],
  stitch: StitchLine['stitch'],
  seam: StitchLine['seam'],
  length: Figure<Mm>,
  starts: number,
): StitchLine => ({ name, stitch, seam, length, starts, top: null });

/** Raw edge to raw edge along one side: the seam runs through hem and casing before they are turned. */
function sideLength(skirt: Skirt): Figure<Mm> {
  const { shape } = skirt.panels[0];
  const finished = shape.edges.find(({ name }) => name === 'right')?.finished ?? [];
  const sewn = figure.length(lengthOf(finished), 'seams.edge');
  const casing = skirt.waist.topAllowance;
  const hem = skirt.hemAllowance;
  return figure.length(mm(sewn.value + casing.value + hem.value), 'seams.side', { sewn, casing, hem });
}

const times = (count: number, each: Figure<Mm>): Figure<Mm> =>
  figure.length(mm(count * each.value), 'seams.edges', { count: figure.count(count, 'seams.count'), each });

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

function elasticLines(skirt: Skirt): StitchLine[] {
  const { elastic } = skirt.waist;
  if (!elastic) return [];
  const { width } = elastic;
  const over = (code: 'seams.join' | 'seams.catch', rounds: number): Figure<Mm> =>
    figure.length(mm(rounds * width.value), code, { width, rounds: figure.count(rounds, 'seams.rounds') });
  const caught = over('seams.catch', CATCH_ROUNDS * skirt.sideSeams);
  return [
    plain('elastic join', '304', 1, over('seams.join', JOIN_ROUNDS), 1),
    plain('elastic catch', '301', 1, caught, skirt.sideSeams),
  ];
}
