import type { HandleName, Speaker } from '@ribbonwright/engine';

/** What a handle is called. */
export function handleLabel(name: HandleName, speaker: Speaker): string {
  const words = speaker.words.table;
  const [kind, number] = name.split(' ');
  if (kind === 'row') return speaker.text(words.handleRow, { number: number ?? '' });
  if (kind === 'gap') return speaker.text(words.handleGap, { number: number ?? '' });
  if (kind === 'tier') return speaker.text(words.handleTier, { number: number ?? '' });
  return {
    length: words.handleLength,
    waistMark: words.handleWaistMark,
    hemMark: words.handleHemMark,
    casing: words.handleCasing,
    hem: words.handleHem,
    overlap: words.handleOverlap,
    band: words.handleBand,
    opening: words.handleOpening,
    slit: words.handleSlit,
    pocket: words.handlePocket,
    tuck: words.handleTuck,
  }[name as Exclude<HandleName, `${string} ${string}`>];
}
