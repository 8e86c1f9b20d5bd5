import type { FromCloth } from '../../plan/index.ts';
import type { Speaker } from '../../words/index.ts';
import { saying } from './saying.ts';

/** What can be made of a length of cloth, for machines. */
export function saidOf({ have, longest, takes, left, ...more }: FromCloth, speaker: Speaker) {
  const say = saying(speaker);
  const { way, fullest, mostRows, count, notices } = more;
  return {
    have: say.plain(have),
    longest: longest && say.length(longest),
    takes: takes && say.length(takes),
    way,
    left: left && say.length(left),
    fullest: fullest && {
      fullness: say.amount(fullest.fullness),
      hemQuarter: say.length(fullest.hemQuarter),
    },
    mostRows: mostRows?.value ?? null,
    count: count.value,
    notices: notices.map((notice) => ({
      level: notice.level,
      code: notice.code,
      text: speaker.notice(notice),
    })),
  };
}
