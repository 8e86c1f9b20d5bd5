export { catalogues, speakerFor, speakerOf, type Speaker, type SpeakerOptions } from './speaker.ts';
export type { Catalogue, FigureCode, FigureWords, NoticeCode } from './catalogue.ts';
export type { PaperWords } from './papers.ts';
export type { CommandWords } from './command.ts';
