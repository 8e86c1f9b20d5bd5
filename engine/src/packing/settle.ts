import { lossAt, type Layout } from './layout.ts';
import { addLine, addLines, type Lines } from './lines.ts';
import { placeX, placeY, type Place } from './place.ts';

/** How often more lines of contact are looked for. */
const ROUNDS = 12;
/** Two lines that are nearly parallel cross too far away to matter. */
const PARALLEL = 1e-3;

/**
 * Moves a piece to where it touches what it overlapped, as long as that overlaps less: onto one of the lines of
 * contact, or where two of them cross, the strip's edges among them. Between such lines the weighted overlap is linear,
 * so it is least where they cross; and there pieces touch exactly, which no sampling would find.
 */
export function settled(layout: Layout, lines: Lines, piece: number, from: Place): Place {
  let at = from;
  lines.count = 0;
  addEdges(layout, lines, from.shape);
  for (let round = 0; round < ROUNDS && at.loss > 0; round++) {
    const known = lines.count;
    addLines(layout, piece, at.shape, at.x, at.y, lines);
    const next = bestOnLines(layout, piece, at, lines, known);
    if (next === at) break;
    at = next;
  }
  return at;
}

function addEdges({ problem, end }: Layout, lines: Lines, shape: number): void {
  addLine(lines, 1, 0, problem.fromX[shape]!);
  addLine(lines, 1, 0, end - problem.right[shape]!);
  addLine(lines, 0, 1, problem.least[shape]!);
  addLine(lines, 0, 1, problem.most[shape]!);
}

/** The best of the places on each line from `known` on and where it crosses the ones before it. */
function bestOnLines(layout: Layout, piece: number, from: Place, lines: Lines, known: number): Place {
  const { outX, outY, at, count } = lines;
  const { x, y } = from;
  let best = from;
  for (let i = known; i < count; i++) {
    const far = at[i]! - outX[i]! * x - outY[i]! * y;
    best = better(layout, piece, from, best, far * outX[i]!, far * outY[i]!);
    for (let j = 0; j < i; j++) {
      const turn = outX[i]! * outY[j]! - outY[i]! * outX[j]!;
      if (turn < PARALLEL && turn > -PARALLEL) continue;
      const other = at[j]! - outX[j]! * x - outY[j]! * y;
      const byX = (far * outY[j]! - other * outY[i]!) / turn;
      const byY = (other * outX[i]! - far * outX[j]!) / turn;
      best = better(layout, piece, from, best, byX, byY);
    }
  }
  return best;
}

/** The place so far from a place, if it is better than the best and no farther than the piece's smaller side. */
function better(layout: Layout, piece: number, from: Place, best: Place, byX: number, byY: number): Place {
  const { shape } = from;
  const reach = layout.problem.small[shape]!;
  if (byX > reach || byX < -reach || byY > reach || byY < -reach || best.loss === 0) return best;
  const x = placeX(layout, shape, from.x + byX);
  const y = placeY(layout, shape, from.y + byY);
  if (x !== x || y !== y || (x === from.x && y === from.y)) return best;
  const loss = lossAt(layout, piece, shape, x, y, best.loss);
  return loss < best.loss ? { shape, x, y, loss } : best;
}
