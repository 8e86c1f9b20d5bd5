import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bench } from 'tinybench';
import { parseRequest, planSkirt, type SkirtRequest } from '@ribbonwright/engine';

const body = { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' };
/** What every cut below carries, so that their costs can be told apart. */
const all = { extras: { pockets: {}, lining: {} }, cut: { sideSeam: '1/2 in' }, ribbons: { rows: 12 } };
const full = (cut: object, waist: string): unknown => ({
  ...all,
  body,
  cut: { ...all.cut, ...cut },
  waist: { kind: waist },
});

/** Seeded cases: plain skirts with six rows, then each cut with twelve rows, pockets and a lining. */
const cases: readonly (readonly [string, unknown])[] = [
  [
    'flared, straight hem',
    { body: { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' } },
  ],
  [
    'flared, curved hem',
    {
      body: { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '65 in' },
      cut: { hemAtFold: '20 in' },
    },
  ],
  [
    'gathered, metric',
    {
      units: 'cm',
      body: { waist: 96, hip: 112, waistToHem: 88, waistToFloor: 103, height: 168 },
      cut: { kind: 'gathered' },
    },
  ],
  ['full: flared', full({ kind: 'flared' }, 'turned casing')],
  ['full: gathered', full({ kind: 'gathered' }, 'turned casing')],
  ['full: 4 gores', full({ kind: 'gored', gores: 4 }, 'separate casing')],
  ['full: 10 gores', full({ kind: 'gored', gores: 10, front: 1.3 }, 'plain waistband')],
  ['full: 5 tiers', full({ kind: 'tiered', tiers: 5 }, 'separate casing')],
  ['full: half circle', full({ kind: 'circle' }, 'separate casing')],
  ['full: full circle', full({ kind: 'circle', fraction: 'full' }, 'plain waistband')],
  ['full: wrap', full({ kind: 'wrap' }, 'plain waistband')],
];

function requestOf(raw: unknown): SkirtRequest {
  const parsed = parseRequest(raw);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return parsed.request;
}

const shown = (milliseconds: number): string => milliseconds.toFixed(2).padStart(7);

const processor = cpus()[0]?.model ?? 'unknown processor';
console.log(`Node ${process.version}, ${String(cpus().length)} cores, ${processor}\n`);

console.log(
  'planSkirt, all lays compared; warmed up 1 s, then 2 s each; milliseconds. Full: 12 rows, pockets, lining.',
);
const bench = new Bench({ time: 2000, warmupTime: 1000, retainSamples: true });
for (const [name, raw] of cases) {
  const request = requestOf(raw);
  bench.add(name, () => {
    planSkirt(request);
  });
}
await bench.run();
for (const task of bench.tasks) {
  const { result } = task;
  if (result.state !== 'completed') throw new Error(`${task.name} did not finish`);
  const sorted = [...(result.latency.samples ?? [])].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? NaN;
  console.log(`  ${task.name.padEnd(24)} median${shown(at(0.5))}   p95${shown(at(0.95))}`);
}

console.log('\nHeap over 10,000 plans, after a forced collection at each quarter; megabytes');
const collect = globalThis.gc;
const requests = cases.map(([, raw]) => requestOf(raw));
const heap = (): string => {
  collect?.();
  return (process.memoryUsage().heapUsed / 2 ** 20).toFixed(1);
};
for (let i = 0; i < 1000; i++) planSkirt(requests[i % requests.length] ?? requestOf(undefined));
const heaps = [heap()];
for (let quarter = 0; quarter < 4; quarter++) {
  for (let i = 0; i < 2500; i++) planSkirt(requests[i % requests.length] ?? requestOf(undefined));
  heaps.push(heap());
}
console.log(`  start ${heaps.join('  →  ')}${collect ? '' : ' (not collected: run with --expose-gc)'}`);

console.log('\nribbonwright papers, whole process from a cold start, built code; seconds, five runs');
const folder = mkdtempSync(join(tmpdir(), 'ribbonwright-bench-'));
const file = join(folder, 'bench.skirt.json');
writeFileSync(file, JSON.stringify(cases[0]?.[1]));
const seconds = Array.from({ length: 5 }, () => {
  const start = performance.now();
  const run = spawnSync(process.execPath, ['cli/bin/ribbonwright.js', 'papers', file, '--out', folder], {
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return (performance.now() - start) / 1000;
});
rmSync(folder, { recursive: true });
console.log(`  ${seconds.map((each) => each.toFixed(2)).join('  ')}`);
