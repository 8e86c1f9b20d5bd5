import type { NumberWords } from '../units/index.ts';

/** Numbers in each language, as the catalogues hold them. */
export const english: NumberWords = {
  locale: 'en-CA',
  inch: 'in',
  yard: 'yd',
  centimetre: 'cm',
  metre: 'm',
  millimetre: 'mm',
};

export const french: NumberWords = { ...english, locale: 'fr-CA', inch: 'po', yard: 'vg' };
