import { z } from 'zod';

/** Share of a beginner's time that the work takes. Common practice, no source. */
export const skills = ['beginner', 'practised', 'experienced'] as const;
export type Skill = (typeof skills)[number];
export const timeShare: Readonly<Record<Skill, number>> = { beginner: 1, practised: 0.65, experienced: 0.4 };

export const sewingOptions = () =>
  z.strictObject({
    skill: z.enum(skills).default('beginner'),
    /** Without one the zigzag keeps edges from fraying. */
    overlocker: z.boolean().default(false),
    /** Whether a motif is sewn on: it has its place in the order. */
    applique: z.boolean().default(false),
  });

export type SewingOptions = z.infer<ReturnType<typeof sewingOptions>>;
