/**
 * Packs one published instance of irregular strip packing and prints what was found.
 *
 *     npm run --silent bench:packing -- --instance FILE --seconds N --seed K --json
 *
 * With --processor the seconds are those of the processor, so that what runs beside it does not matter.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { pack } from '../engine/src/packing/index.ts';
import { readInstance, utilisationOf } from '../engine/src/packing/testing/instance.ts';

const { values } = parseArgs({
  options: {
    instance: { type: 'string' },
    seconds: { type: 'string', default: '60' },
    evaluations: { type: 'string' },
    seed: { type: 'string', default: '1' },
    processor: { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
  },
});
if (values.instance === undefined) throw new Error('--instance FILE is missing');
const instance = readInstance(readFileSync(values.instance, 'utf8'));
const seconds = Number(values.seconds);
const seed = Number(values.seed);
const evaluations = values.evaluations === undefined ? undefined : Number(values.evaluations);
const now = (): number => {
  if (!values.processor) return performance.now() / 1000;
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};
const began = now();
const sofar = (): number => now() - began;
const result = pack(instance.job, {
  seed,
  ...(evaluations === undefined ? { spent: () => sofar() / seconds } : { evaluations }),
  better: (found) => {
    if (!values.json)
      process.stderr.write(
        `${sofar().toFixed(2)} s  ${utilisationOf(instance, found.length).toFixed(3)} %\n`,
      );
  },
});
if (!result.ok) throw new Error(`can't be packed: ${JSON.stringify(result.refusals)}`);
const { placements, length, lowerBound, evaluations: tried } = result.packing;
const found = {
  instance: instance.name,
  utilisation: utilisationOf(instance, length),
  length,
  lowerBound,
  evaluations: tried,
  seconds: sofar(),
  seed,
  placements: placements.map(({ item, rotation, x, y }) => ({ item, rotation, x, y })),
};
process.stdout.write(values.json ? `${JSON.stringify(found)}\n` : `${String(found.utilisation)} %\n`);
