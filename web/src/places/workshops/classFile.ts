import type { RequestDocument } from '@ribbonwright/engine';
import { fileNameOf } from '../../carry/index.ts';

/** What a class's file is called: after its name, as a skirt's is. */
export const classFileName = (document: RequestDocument): string =>
  fileNameOf(document).replace(/\.skirt\.json$/, '.class.json');
