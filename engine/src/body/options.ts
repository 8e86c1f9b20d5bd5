import { z } from 'zod';
import type { Fields } from '../fields/index.ts';
import { ageLimits, measureLimits } from './limits.ts';
import { measureNames, paces, type MeasureName } from './measures.ts';

/** Schema of one body: waist, hip and finished length are asked for, the rest is welcome. */
export const bodyOptions = (fields: Fields) => {
  const take = (name: MeasureName) => fields.length(measureLimits[name]);
  const maybe = (name: MeasureName) => take(name).optional();
  return z.strictObject({
    waist: take('waist'),
    hip: take('hip'),
    waistToHem: take('waistToHem'),
    waistToFloor: maybe('waistToFloor'),
    height: maybe('height'),
    calf: maybe('calf'),
    /** Years. */
    age: z.number().min(ageLimits.least).max(ageLimits.most).optional(),
    pace: z.enum(paces).default('usual'),
    /** The same measurements taken again. */
    second: z
      .strictObject(
        Object.fromEntries(measureNames.map((name) => [name, maybe(name)])) as Record<
          MeasureName,
          ReturnType<typeof maybe>
        >,
      )
      .optional(),
  });
};
