import { mm } from '../units/index.ts';
import { figure } from './codes.ts';
import { work, type Work } from './works.ts';

/** A button of about ¾ in: its hole is sewn round, and its shank is a few stitches. Common practice, no source. */
const BUTTONHOLE = mm(50);
const BUTTON = mm(10);

/** So many buttons, each with its hole. */
export const buttonWorks = (count: number): Work[] => [
  work('buttonhole', figure.length(BUTTONHOLE, 'waist.buttonholeLine'), count),
  work('button', figure.length(BUTTON, 'waist.buttonLine'), count),
];
