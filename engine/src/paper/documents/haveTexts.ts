import type { FromCloth } from '../../plan/index.ts';
import type { Speaker } from '../../words/index.ts';

/** Which length of cloth it is that something can be made of. */
export function haveTitle({ have, at }: Pick<FromCloth, 'have' | 'at'>, speaker: Speaker): string {
  const { papers } = speaker.words;
  const length = speaker.length(have);
  if (!at) return speaker.text(papers.haveHeading, { have: length });
  const width = speaker.length(at.width);
  return at.name === ''
    ? speaker.text(papers.haveHeadingPlain, { have: length, width })
    : speaker.text(papers.haveHeadingOf, { name: at.name, have: length, width });
}

/** What can be made of a length of cloth. */
export function haveLines(answer: FromCloth, speaker: Speaker): string[] {
  const { papers } = speaker.words;
  const { longest, way, fullest, mostRows, count } = answer;
  if (!longest) return [papers.haveNothing];
  return [
    speaker.text(papers.haveLongest, { length: longest, lay: way ?? '' }),
    ...(fullest
      ? [speaker.text(papers.haveFullest, { fullness: fullest.fullness, hem: fullest.hemQuarter })]
      : []),
    ...(mostRows ? [speaker.text(papers.haveRows, { rows: mostRows })] : []),
    speaker.text(papers.haveMany, { count }),
  ];
}

/** How its numbers were got. */
export function haveWorkings({ longest, takes, left, count }: FromCloth, speaker: Speaker): string[] {
  if (!longest) return [];
  const { papers } = speaker.words;
  const said = [
    { name: papers.haveTakes, figure: takes },
    { name: left ? speaker.name(left) : '', figure: left },
    { name: speaker.name(count), figure: count },
  ];
  return said.flatMap(({ name, figure }) => {
    const working = figure && speaker.working(figure);
    return working ? [`${speaker.text(papers.lead, { what: name })} ${working}`] : [];
  });
}
