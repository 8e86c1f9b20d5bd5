import { wornPicture, type Drawing, type SkirtPlan, type Speaker } from '@ribbonwright/engine';

/** A skirt from the front, as it is worn or by itself, and how large its drawing is in cloth. */
export interface Worn {
  readonly drawing: Drawing;
  /** Width of the drawing if it were drawn at true size, to show two skirts at one scale. */
  readonly trueWidth: number;
}

export function wornFront(plan: SkirtPlan, speaker: Speaker, shown: 'whole' | 'alone' = 'whole'): Worn {
  const { drawing, handles } = wornPicture(plan, speaker, 'front', { shown });
  const perMm = handles.find(({ name }) => name === 'length')?.perMm ?? 1;
  return { drawing, trueWidth: drawing.width * perMm };
}
