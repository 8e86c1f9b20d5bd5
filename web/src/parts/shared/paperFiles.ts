/** Characters that some file system does not take in a name. */
const REFUSED = /[\p{Cc}\p{Cf}<>:"/\\|?*.]+/gu;
const LONGEST = 60;

/** A name for the file of a paper, of the skirt's name and the paper's. */
export const paperFileName = (title: string, paper: string): string =>
  `${[title, paper]
    .map((part) => part.replace(REFUSED, ' ').replace(/\s+/g, ' ').trim().slice(0, LONGEST).trim())
    .filter((part) => part !== '')
    .join(' - ')}.pdf`;

/** The day on a paper, as the maker's own calendar has it: `2026-01-31`. */
export const dayOf = (moment: Date): string =>
  [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()]
    .map((part, i) => String(part).padStart(i === 0 ? 4 : 2, '0'))
    .join('-');
