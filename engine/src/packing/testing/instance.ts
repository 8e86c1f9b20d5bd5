import type { PackingJob } from '../index.ts';

interface Written {
  readonly name: string;
  readonly stripWidth: number;
  readonly items: readonly {
    readonly demand: number;
    readonly rotations?: readonly number[];
    readonly polygon: readonly (readonly [number, number])[];
  }[];
}

export interface Instance {
  readonly name: string;
  readonly job: PackingJob;
  readonly area: number;
}

/** A published instance: strip width, demands, allowed turns and corners; any unit of length. */
export function readInstance(text: string): Instance {
  const { name, stripWidth, items } = JSON.parse(text) as Written;
  const job: PackingJob = {
    width: stripWidth,
    items: items.map(({ demand, rotations, polygon }) => ({
      outline: polygon.map(([x, y]) => ({ x, y })),
      demand,
      rotations: rotations ?? [0],
    })),
  };
  const area = items.reduce((sum, { demand, polygon }) => sum + demand * Math.abs(areaOf(polygon)), 0);
  return { name, job, area };
}

const areaOf = (polygon: readonly (readonly [number, number])[]): number =>
  polygon.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = polygon[(i + 1) % polygon.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Area of the pieces in percent of the strip they take. */
export const utilisationOf = ({ area, job }: Instance, length: number): number =>
  (100 * area) / (job.width * length);
