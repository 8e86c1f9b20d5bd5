import type { Figure, SkirtPlan, Speaker } from '@ribbonwright/engine';

export type Step = SkirtPlan['sewing']['steps'][number];

/** The page that is open: a step, or what comes after the last. */
export type Page = Step['id'] | 'end';

type Ticks = Readonly<Record<string, boolean>>;

/** The numbers in a step's sentences, in their order, each once. */
export function numbersOf(step: Step, speaker: Speaker): Figure[] {
  const found = new Map<string, Figure>();
  for (const { params } of step.sentences)
    for (const param of Object.values(params))
      if (typeof param === 'object') {
        const key = `${speaker.name(param)} ${speaker.value(param)}`;
        if (!found.has(key)) found.set(key, param);
      }
  return [...found.values()];
}

export const pagesOf = (steps: readonly Step[]): Page[] => [...steps.map(({ id }) => id), 'end'];

/** The first page that is not done; where she turned to another that the plan still has, that one. */
export function pageShown(steps: readonly Step[], done: Ticks, turnedTo: Page | null): Page {
  const pages = pagesOf(steps);
  if (turnedTo !== null && pages.includes(turnedTo)) return turnedTo;
  return pages.find((page) => !done[page]) ?? 'end';
}

/** The page `by` further on; at either end it stays. */
export function turned(pages: readonly Page[], from: Page, by: number): Page {
  const to = Math.min(pages.length - 1, Math.max(0, pages.indexOf(from) + by));
  return pages[to] ?? from;
}

/** How the machine is set: stitch, length, and of a zigzag its width. */
export function stitchText({ stitch }: Step, speaker: Speaker): string | null {
  if (!stitch) return null;
  const { papers, stitches } = speaker.words;
  return speaker.text(stitch.width ? papers.stitchWidth : papers.stitchLength, {
    stitch: stitches[stitch.stitch],
    length: stitch.length,
    ...(stitch.width ? { width: stitch.width } : {}),
  });
}
