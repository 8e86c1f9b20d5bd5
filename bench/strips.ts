/**
 * Packs every published instance of a folder with several seeds, one process each, and prints the table that
 * docs/performance.md holds.
 *
 *     npm run --silent bench:strips -- --folder FOLDER --seconds 60 --seeds 5 --jobs 2
 *
 * With --processor the seconds are those of each run's processor.
 */
import { execFile } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { basename, join } from 'node:path';
import { parseArgs, promisify } from 'node:util';

const { values } = parseArgs({
  options: {
    folder: { type: 'string' },
    seconds: { type: 'string', default: '60' },
    seeds: { type: 'string', default: '5' },
    jobs: { type: 'string', default: '1' },
    processor: { type: 'boolean', default: false },
  },
});
if (values.folder === undefined) throw new Error('--folder FOLDER is missing');
const { folder, seconds } = values;

/** Best published utilisation in percent: the table of the folder's README, whose sources it names. */
function bestOf(name: string): number {
  const rows = readFileSync(join(folder, 'README.md'), 'utf8').split('\n');
  const row = rows.find((each) => each.startsWith(`| ${name} `));
  const best = Number(row?.split('|')[6]);
  if (!(best > 0)) throw new Error(`no best value of ${name}`);
  return best;
}

const run = promisify(execFile);
async function utilisation(file: string, seed: number): Promise<number> {
  const { stdout } = await run(process.execPath, [
    ...['--conditions=source', '--import', 'tsx', join(import.meta.dirname, 'packing.ts')],
    ...['--instance', join(folder, file), '--seconds', seconds, '--seed', String(seed), '--json'],
    ...(values.processor ? ['--processor'] : []),
  ]);
  return (JSON.parse(stdout) as { utilisation: number }).utilisation;
}

const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const waiting = files.flatMap((file) =>
  Array.from({ length: Number(values.seeds) }, (_, i) => ({ file, seed: i + 1 })),
);
const found = new Map<string, number[]>(files.map((file) => [file, []]));
async function work(): Promise<void> {
  for (let next = waiting.shift(); next; next = waiting.shift())
    found.get(next.file)?.push(await utilisation(next.file, next.seed));
}
await Promise.all(Array.from({ length: Number(values.jobs) }, work));

const median = (numbers: readonly number[]): number => {
  const sorted = numbers.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? NaN) + (sorted[Math.floor(half)] ?? NaN)) / 2;
};
const shown = (number: number): string => number.toFixed(2);
console.log(
  `Node ${process.version}, ${cpus()[0]?.model ?? '?'}, ${values.jobs} at a time, ${seconds} s each`,
);
console.log(`seeds 1 to ${values.seeds}\n`);
console.log('| instance | median % | least | most | best published % | ours ÷ best |');
console.log('| --- | --- | --- | --- | --- | --- |');
const ratios: number[] = [];
for (const [file, all] of found) {
  const name = basename(file, '.json');
  const best = bestOf(name);
  const ratio = median(all) / best;
  ratios.push(ratio);
  const cells = [name, shown(median(all)), shown(Math.min(...all)), shown(Math.max(...all)), String(best)];
  console.log(`| ${cells.join(' | ')} | ${ratio.toFixed(4)} |`);
}
const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
console.log(`\nmean ${mean.toFixed(4)}, least ${Math.min(...ratios).toFixed(4)}`);
