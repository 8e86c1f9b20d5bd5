export { writeSvg, type SvgOptions } from './writeSvg.ts';
