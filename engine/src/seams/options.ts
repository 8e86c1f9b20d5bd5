import { z } from 'zod';

/** How raw side seams are kept from fraying; without an overlocker the zigzag does it. */
export const edgeFinishes = ['overlocker', 'zigzag'] as const;
export type EdgeFinish = (typeof edgeFinishes)[number];

export const edgeFinishOption = z.enum(edgeFinishes).default('zigzag');
