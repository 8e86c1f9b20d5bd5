import type { HandleName, Speaker } from '@ribbonwright/engine';

/** What a handle is called. */
export function handleLabel(name: HandleName, speaker: Speaker): string {
  const words = speaker.words.table;
  const [kind, number] = name.split(' ');
  if (kind === 'row') return speaker.text(words.handleRow, { number: number ?? '' });
  if (kind === 'gap') return speaker.text(words.handleGap, { number: number ?? '' });
  return {
    length: words.handleLength,
    waistMark: words.handleWaistMark,
    hemMark: words.handleHemMark,
    casing: words.handleCasing,
    hem: words.handleHem,
  }[name as Exclude<HandleName, `${string} ${string}`>];
}
