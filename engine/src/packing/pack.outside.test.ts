import { existsSync, readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patience, runs } from '../testing/runs.ts';
import { pack, type Packing, type PackingJob } from './index.ts';
import { anyJob } from './testing/jobs.ts';
import { readInstance, utilisationOf } from './testing/instance.ts';
import { drawn, fine, outside, overlap, wider } from './testing/look.ts';

/** An answer may be off by a hundred-thousandth of the strip's width: 0.01 mm on cloth 1 m wide. */
const hairOf = ({ width }: PackingJob): number => width * 1e-5;

/** Looks at an answer with the polygon clipping library clipper2-ts, and with the definition of a placement only. */
function look(job: PackingJob, { placements, length, lowerBound }: Packing): void {
  const hair = hairOf(job);
  const pieces = placements.map((placement) => drawn(job, placement));
  for (const [at, { demand }] of job.items.entries())
    expect(placements.filter(({ item }) => item === at)).toHaveLength(demand);
  for (const { item, rotation, mirrored } of placements) {
    const { rotations, mirror = false } = job.items[item] ?? { rotations: [] };
    expect(rotations === 'any' || rotations.some((each) => (each - rotation) % 360 === 0)).toBe(true);
    expect(mirror || !mirrored).toBe(true);
  }
  for (const piece of pieces) expect(outside(piece, job.width, length)).toBeLessThan(hair);
  const grown = pieces.map((piece) => (job.spacing ? wider(piece, job.spacing - hair) : piece));
  for (const [i, piece] of pieces.entries()) {
    for (const [j, other] of grown.entries()) if (i < j) expect(overlap(piece, other)).toBeLessThan(hair);
    for (const area of job.keepOut ?? []) expect(overlap(grown[i] ?? piece, fine(area))).toBeLessThan(hair);
  }
  expect(lowerBound).toBeLessThanOrEqual(length + 1e-9);
}

test(
  'any job is packed without overlap, inside, turned as allowed, each piece once; or a piece is too wide',
  patience,
  () => {
    fc.assert(
      fc.property(anyJob, fc.integer(), (job, seed) => {
        const result = pack(job, { seed, evaluations: 4000 });
        if (result.ok) look(job, result.packing);
        else for (const { code } of result.refusals) expect(code).toBe('too wide');
      }),
      { numRuns: runs(150) },
    );
  },
);

test('copies that lie already stay as they lie, and the others go round them', patience, () => {
  fc.assert(
    fc.property(anyJob, fc.integer(), fc.integer({ min: 1, max: 4 }), (job, seed, every) => {
      const first = pack(job, { seed, evaluations: 500 });
      if (!first.ok) return;
      const fixed = first.packing.placements.filter((_, i) => i % every === 0);
      const result = pack({ ...job, fixed }, { seed, evaluations: 2000 });
      expect(result.ok).toBe(true);
      if (!result.ok) return;
      look(job, result.packing);
      for (const each of fixed) expect(result.packing.placements).toContainEqual(each);
    }),
    { numRuns: runs(50) },
  );
});

/** Ten instances of the literature, data/strip-packing; their sources in its README. */
const folder = new URL('../../../../shared/data/strip-packing/', import.meta.url);

describe.skipIf(!existsSync(folder))('published instances', () => {
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.json')) : [];
  // Rules that lay pieces one by one end 8–20 % above the best known; a short search must be past most of that.
  test.each(names)('%s: valid, and well on the way after 400,000 places', (name) => {
    const instance = readInstance(readFileSync(new URL(name, folder), 'utf8'));
    const result = pack(instance.job, { seed: 1, evaluations: 400_000 });
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    look(instance.job, result.packing);
    expect(utilisationOf(instance, result.packing.length)).toBeGreaterThan(55);
  });
});
