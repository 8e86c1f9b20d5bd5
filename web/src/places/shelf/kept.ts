import { parseColour, parseLength, type Colour, type Speaker } from '@ribbonwright/engine';

/** A kept colour; one that can't be read any more is drawn as the ground's own. */
export const colourOf = (written: unknown): Colour =>
  parseColour(written) ?? { hex: '#b7a684', preset: null, name: '?' };

/** A kept length in the measure of the table; what can't be read as it was written. */
export function shownLength(written: string, speaker: Speaker): string {
  const parsed = parseLength(written);
  return parsed.ok ? speaker.length(parsed.value) : written;
}
