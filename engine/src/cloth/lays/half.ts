import { chordWithin, endOf, line, point, polyline, startOf, type Path } from '../../geometry/index.ts';

const FAR = 1e5;
const rightOfCentre = polyline([point(0, -FAR), point(FAR, -FAR), point(FAR, FAR), point(0, FAR)], {
  closed: true,
});

/** The right half of a panel, closed along its centre: what lies against a fold. */
export function rightHalf(outline: Path): Path {
  const parts = chordWithin(rightOfCentre, outline).flat();
  const first = parts[0];
  const last = parts.at(-1);
  return first && last ? [...parts, line(endOf(last), startOf(first))] : [];
}
