export type { Arrived } from './arrived.ts';
export { addressIn, addressWith } from './arriving.ts';
export { codeFor } from './code.ts';
export { download, fileNameOf, fileOf } from './file.ts';
export { pack, unpack } from './packed.ts';
export { readFile } from './read.ts';
export { readCode } from './readCode.ts';
