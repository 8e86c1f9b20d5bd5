import type { NoticeParam } from '../../figure/index.ts';
import type { Cutting } from '../blocks.ts';
import type { PanelSeam } from '../job/found.ts';

type Params = Readonly<Record<string, NoticeParam>>;

/** Pieces by their names, and how many there are of each. */
export function countsOf(cuttings: readonly Cutting[]): Params[] {
  const counts = new Map<string, number>();
  const count = (name: string): void => void counts.set(name, (counts.get(name) ?? 0) + 1);
  for (const { copies } of cuttings)
    for (const { panels, parts } of copies) {
      for (const { name } of panels) count(`panel ${name}`);
      for (const { name } of parts) count(`part ${name}`);
    }
  return [...counts].map(([piece, many]) => ({ piece, count: many }));
}

/** Whose seam it is, and its two panels, each by its name and its number; whether one panel closes on itself there. */
export const seamParams = (wearer: string, { before, after }: PanelSeam): Params => ({
  wearer: wearer || 'nobody',
  closes: before === after ? 'yes' : 'no',
  before: `panel ${before.name}`,
  beforeNumber: before.number,
  after: `panel ${after.name}`,
  afterNumber: after.number,
});
