import { line, point, polyline } from '../../geometry/index.ts';
import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, stepsIn, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Notch, Part, PartCloth, PartName, PieceShape } from '../panel.ts';

interface Strip {
  readonly name: PartName;
  readonly cloth: PartCloth;
  /** Finished, end to end or round, all pieces together. */
  readonly long: Figure<Mm>;
  /** As cut, its seams included. */
  readonly width: Figure<Mm>;
  readonly seam: Figure<Mm>;
  /** Longest piece that the cloth gives. */
  readonly longest: Mm;
  readonly mark: Mm;
  readonly grain: Part['grain'];
  /** Finished length from one end to each mark that meets one on the skirt: only a strip in one piece has them. */
  readonly matches: readonly Mm[];
}

/** A straight strip, folded along its middle, in as many pieces as the cloth asks. */
export function stripPart(strip: Strip): Part {
  const { long, seam, width, mark } = strip;
  const room = Math.max(1, strip.longest - 2 * seam.value);
  const pieces = figure.count(Math.max(1, stepsIn(long.value, room, 'up')), 'waist.pieces', {});
  const exact = mm(long.value / pieces.value + 2 * seam.value);
  // Every piece has two ends to sew: to the next piece, to its own other end, or closed.
  const length = figure.length(
    roundTo(exact, mark, 'up'),
    'waist.pieceLength',
    { long, pieces, seam },
    { exact },
  );
  const matches = pieces.value === 1 ? strip.matches : [];
  return {
    name: strip.name,
    count: pieces.value,
    cloth: strip.cloth,
    shape: stripShape(length.value, width.value, seam.value, matches),
    grain: strip.grain,
    mirrored: false,
    measures: [width, length],
  };
}

/** Marks of the centre and the quarters on a strip that goes all the way round, from its join. */
export const quartersOf = (round: Mm): readonly Mm[] => [1, 2, 3].map((quarter) => mm((quarter * round) / 4));

/** Length of a notch's place along the edge that meets the skirt: the lower one. */
function stripShape(length: Mm, width: Mm, seam: Mm, matches: readonly Mm[]): PieceShape {
  // Seams deeper than half the strip leave a finished line in its middle.
  const ends = Math.min(seam, length / 2);
  const edge = Math.min(seam, width / 2);
  const [outX, inX] = [length / 2, length / 2 - ends];
  const [top, inTop, inHem, hem] = [-edge, 0, width - 2 * edge, width - edge];
  const raw = polyline([point(-outX, top), point(outX, top), point(outX, hem), point(-outX, hem)], {
    closed: true,
  });
  const sewn = (name: PieceShape['edges'][number]['name'], from: [number, number], to: [number, number]) => ({
    name,
    finished: [line(point(...from), point(...to))],
    allowance: mm(name === 'left' || name === 'right' ? ends : edge),
    turned: false,
  });
  const middle = (inTop + inHem) / 2;
  const notches = matches.map((along): Notch => {
    const x = Math.min(inX, Math.max(-inX, along - inX));
    return { at: point(x, hem), inward: point(0, -1), use: Math.abs(x) < 1 ? 'centre' : 'match', lines: 1 };
  });
  return {
    edges: [
      sewn('waist', [-inX, inTop], [inX, inTop]),
      sewn('right', [inX, inTop], [inX, inHem]),
      sewn('hem', [inX, inHem], [-inX, inHem]),
      sewn('left', [-inX, inHem], [-inX, inTop]),
    ],
    trimmed: raw,
    cut: raw,
    notches,
    folds: [[line(point(-outX, middle), point(outX, middle))]],
    symmetric: notches.every(({ at }) => notches.some((other) => Math.abs(other.at.x + at.x) < 1)),
  };
}
