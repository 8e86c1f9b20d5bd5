export { planSewing, type Sewing } from './sewing.ts';
export { sewingOptions, type SewingOptions, type Skill } from './options.ts';
export type { Bench } from './bench.ts';
export type { Caution, Station, Step, StepId, Stitch } from './step.ts';
export type { Sentence, SentenceCode } from './sentence.ts';
export type { SewingFigureCode } from './codes.ts';
