/** How raw side seams are kept from fraying; without an overlocker the zigzag does it. */
export type EdgeFinish = 'overlocker' | 'zigzag';
