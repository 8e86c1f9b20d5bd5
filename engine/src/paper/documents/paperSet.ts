import type { FromCloth, SkirtPlan } from '../../plan/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { ClassPlan } from '../../workshop/index.ts';
import type { PaperDocument, PaperFonts } from '../drawing/index.ts';
import { paperSizes, sheet, type Sheet } from '../layout/index.ts';

/** What every paper is made from. */
export interface PaperInput {
  readonly plan: SkirtPlan;
  readonly speaker: Speaker;
  readonly fonts: PaperFonts;
  /** Day on the papers, told by whoever prints them; null leaves it off. */
  readonly date: Date | null;
  /** Of each length of cloth that was asked about: what can be made of it. */
  readonly fromCloth: readonly FromCloth[];
  /** Its cloths laid as a search found them, to chalk from; null where they are laid by hand. */
  readonly laid: ClassPlan | null;
}

/** One paper of the set: a name for its file and the document. */
export interface Paper {
  readonly name: PaperName;
  readonly document: PaperDocument;
}

export const paperNames = ['card', 'lay', 'ribbons', 'shopping', 'sewing'] as const;
export type PaperName = (typeof paperNames)[number];

/** What the maker called her skirt, or whom it is for. */
export function titleOf({ plan, speaker }: Pick<PaperInput, 'plan' | 'speaker'>): string {
  const { name, wearer } = plan.request;
  const { papers } = speaker.words;
  if (name !== '') return name;
  return wearer === '' ? papers.titlePlain : speaker.text(papers.titleFor, { wearer });
}

/** Sheet of a paper: its head names the skirt and the paper, its foot the page. */
export const sheetOf = (input: PaperInput, paper: string): Sheet =>
  namedSheet(titleOf(input), input.plan.request.paper, input, paper);

/** The same of whatever the paper is about: a skirt, a class. */
export function namedSheet(
  title: string,
  size: keyof typeof paperSizes,
  { speaker, date }: Pick<PaperInput, 'speaker' | 'date'>,
  paper: string,
): Sheet {
  const { papers, numbers } = speaker.words;
  const day =
    date && new Intl.DateTimeFormat(numbers.locale, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
  const made = day ? ` · ${speaker.text(papers.madeOn, { date: day })}` : '';
  return sheet({
    size: paperSizes[size],
    header: `${title} · ${paper}${made}`,
    footer: (page, pages) => speaker.text(papers.pageOf, { page, pages }),
  });
}

export const documentOf = (
  input: PaperInput,
  paper: string,
  pages: PaperDocument['pages'],
): PaperDocument => ({
  title: `${titleOf(input)} · ${paper}`,
  language: input.speaker.language,
  date: input.date,
  pages,
});
