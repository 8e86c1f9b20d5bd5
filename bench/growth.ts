/**
 * What packing costs as work grows: skirt panels of ten sizes on a strip of cloth, more and more of them. Of each job
 * the time to the first lay, the time until the lay is within 2 % of the last one, and memory.
 *
 *     npm run --silent bench:growth -- --seconds 60
 */
import { cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { pack, type PackingItem } from '../engine/src/packing/index.ts';

const { values } = parseArgs({
  options: {
    seconds: { type: 'string', default: '60' },
    counts: { type: 'string', default: '10,30,100,300,1000' },
  },
});
const seconds = Number(values.seconds);

/** Gores from the smallest to the largest of ten sizes, mm: top, hem and length grow together; hem edges are bent. */
function gore(size: number, demand: number): PackingItem {
  const [top, hem, length] = [90 + 14 * size, 210 + 22 * size, 620 + 38 * size];
  const arc = Array.from({ length: 9 }, (_, i) => {
    const at = -1 + i / 4;
    return { x: -12 * (1 - at * at), y: (at * hem) / 2 };
  });
  return {
    outline: [...arc, { x: length, y: top / 2 }, { x: length, y: -top / 2 }],
    demand,
    rotations: [0, 180],
  };
}

const shown = (value: number): string => value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0);
console.log(`Node ${process.version}, ${cpus()[0]?.model ?? '?'}, ${values.seconds} s each, seed 1\n`);
console.log(
  '| pieces | first lay, s | its length, m | last, m | within 2 % of the last, s | bound, m | heap, MB |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- |');
for (const count of values.counts.split(',').map(Number)) {
  globalThis.gc?.();
  const items = Array.from({ length: 10 }, (_, size) => gore(size, Math.floor((count + size) / 10)));
  const began = performance.now();
  const sofar = (): number => (performance.now() - began) / 1000;
  const steps: { at: number; length: number }[] = [];
  let heap = 0;
  const result = pack(
    { width: 1480, items },
    {
      seed: 1,
      spent: () => sofar() / seconds,
      better: ({ length }) => {
        steps.push({ at: sofar(), length });
        const { heapUsed, arrayBuffers } = process.memoryUsage();
        heap = Math.max(heap, heapUsed + arrayBuffers);
      },
    },
  );
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  const { length, lowerBound, placements } = result.packing;
  const first = steps[0] ?? { at: NaN, length: NaN };
  const near = steps.find((step) => step.length <= 1.02 * length);
  const cells = [
    first.at,
    first.length / 1000,
    length / 1000,
    near?.at ?? NaN,
    lowerBound / 1000,
    heap / 1e6,
  ];
  console.log(`| ${String(placements.length)} | ${cells.map(shown).join(' | ')} |`);
}
