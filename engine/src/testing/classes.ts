import { parseClass, type ClassRequest } from '../request/index.ts';
import { planClass, type ClassPlan } from '../workshop/index.ts';

/** Parses a class; throws on a parse error. */
export function classOf(raw: unknown): ClassRequest {
  const parsed = parseClass(raw);
  if (!parsed.ok) throw new Error(JSON.stringify({ errors: parsed.errors, raw }));
  return parsed.request;
}

const NAMES = ['Robin', 'Sam', 'Jo', 'Kit', 'Alex', 'Max', 'Lou', 'Andy', 'Pat', 'Chris'];
const CUTS = [{ kind: 'flared' }, { kind: 'gored', gores: 6 }, { kind: 'gathered' }, { kind: 'circle' }];

/** A class of so many, their bodies and cuts in turn. */
export const roster = (count: number, more: object = {}): object => ({
  cloths: { navy: { lengths: [{ name: 'old', length: '70 in' }] } },
  skirts: Array.from({ length: count }, (_, i) => ({
    wearer: NAMES[i % NAMES.length],
    cut: CUTS[i % CUTS.length],
    body: {
      waist: `${String(24 + (i % 5) * 3)} in`,
      hip: `${String(32 + (i % 5) * 3)} in`,
      waistToHem: `${String(24 + (i % 4) * 3)} in`,
    },
  })),
  ...more,
});

export const classPlanOf = (raw: unknown): ClassPlan => planClass(classOf(raw));
