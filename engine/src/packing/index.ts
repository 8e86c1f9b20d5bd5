export type {
  Corner,
  Effort,
  Lattice,
  Outline,
  Packing,
  PackingItem,
  PackingJob,
  PackingResult,
  Placement,
  Refusal,
} from './job.ts';
export { noMeetings, type Meetings } from './overlaps.ts';
export { pack } from './pack.ts';
