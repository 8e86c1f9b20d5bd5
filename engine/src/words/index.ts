export { catalogueOf, languageName } from './languages.ts';
export { speakerFor, speakerOf, speakerOver, type Speaker, type SpeakerOptions } from './speaker.ts';
export type { Catalogue, FigureCode, FigureWords, NoticeCode } from './catalogue.ts';
export type { PaperWords } from './papers.ts';
export type { CommandWords } from './command.ts';
