import { z } from 'zod';
import type { Fields } from '../fields/index.ts';
import { growthOptions } from './growth/options.ts';
import { ageLimits, halfLimits, levelLimits, measureLimits } from './limits.ts';
import { measureNames, paces, waysToWear, type MeasureName } from './measures.ts';

/** Schema of one body: waist and finished length are asked for, the rest is welcome, the hip most of all. */
export const bodyOptions = (fields: Fields) => {
  const take = (name: MeasureName) => fields.length(measureLimits[name]);
  const maybe = (name: MeasureName) => take(name).optional();
  const level = () => fields.length(levelLimits).optional();
  const half = () => fields.length(halfLimits);
  return z.strictObject({
    waist: take('waist'),
    hip: maybe('hip'),
    waistToHem: take('waistToHem'),
    waistToFloor: maybe('waistToFloor'),
    height: maybe('height'),
    hipDepth: maybe('hipDepth'),
    calf: maybe('calf'),
    thigh: maybe('thigh'),
    /** Years. */
    age: z.number().min(ageLimits.least).max(ageLimits.most).optional(),
    pace: z.enum(paces).default('usual'),
    wears: z.enum(waysToWear).default('standing'),
    /** A child's growth: the forecast of when the skirt will be short. */
    growing: growthOptions(fields).optional(),
    /** Waist to floor at places round the waist. */
    levels: z.strictObject({ front: level(), back: level(), left: level(), right: level() }).optional(),
    /** Half the hip line on each side, centre front to centre back. */
    halves: z.strictObject({ left: half(), right: half() }).optional(),
    /** What a clothing label prints for the hips. */
    size: z.strictObject({ from: take('hip'), to: take('hip') }).optional(),
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
