import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { isCalendarDate } from './calendar.ts';
import { growthReferences, referenceAges, type GrowthReference } from './reference.ts';

/** How a child's growth is told, after parsing. */
export interface Growing {
  readonly reference: GrowthReference;
  /** Age in months on the day of measuring, 24 to 240; may be fractional. */
  readonly ageMonths: number;
  /** The day on which the height was measured, YYYY-MM-DD. */
  readonly measuredOn: string;
  /** How long the skirt is to fit, counted from the day of measuring. */
  readonly months: number;
  /** How far the hem may rise before the skirt counts as too short. */
  readonly shortWhen: Mm;
}

/** From a hem that barely moved to one that moved from ankle to calf. Common practice, no source. */
const riseLimits = { least: mm(5), most: mm(150) };

const dateField = z
  .string()
  .transform((text, context) => {
    if (isCalendarDate(text)) return text;
    context.addIssue({ code: 'custom', input: text, params: { fault: 'date' } });
    return z.NEVER;
  })
  .meta({ description: 'A day of the calendar: "2026-03-14" (year, month, day).' });

/** Schema of a child's growth. An inch shorter than it was is what people see. Common practice, no source. */
export const growthOptions = (fields: Fields) =>
  z.strictObject({
    reference: z.enum(growthReferences),
    ageMonths: z.number().min(referenceAges.least).max(referenceAges.most),
    measuredOn: dateField,
    months: z.int().min(1).max(60).default(12),
    shortWhen: fields.usual(riseLimits, { inches: '1 in', metric: '2.5 cm' }),
  });
