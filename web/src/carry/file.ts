import type { RequestDocument } from '@ribbonwright/engine';

/** Keys in the order they are read by people; others follow as they stand. */
const order = [
  'version',
  'name',
  'wearer',
  'language',
  'measure',
  'units',
  'mark',
  'body',
  'cut',
  'waist',
  'ribbons',
  'cloth',
  'supplies',
  'sewing',
  'paper',
  'teachings',
];

const ENDING = '.skirt.json';
const NAMELESS = 'ribbon-skirt';
/** Letters of a name: four bytes each and the ending still keep within the 255 that file systems allow. */
const LONGEST_NAME = 60;

/** Letters that Unicode does not take apart into a plain one and its accent. */
const folded: Readonly<Record<string, string>> = {
  œ: 'oe',
  æ: 'ae',
  ø: 'o',
  ß: 'ss',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
};

/** Names that Windows keeps for devices, whatever their ending. */
const device = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * What a skirt's file is called: after its name, else its wearer. Accents are folded, spaces and signs become
 * hyphens; letters of other scripts, such as syllabics, stay.
 */
export function fileNameOf(document: RequestDocument): string {
  const stem = [document['name'], document['wearer']].map(stemOf).find((each) => each !== '') ?? NAMELESS;
  return `${device.test(stem) ? `${NAMELESS}-${stem}` : stem}${ENDING}`;
}

function stemOf(name: unknown): string {
  if (typeof name !== 'string') return '';
  const plain = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .normalize('NFC')
    .toLowerCase()
    .replace(/[œæøßłđðþ]/g, (letter) => folded[letter] ?? letter)
    .replace(/['’ʼ`]/g, '')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-');
  return Array.from(plain.replace(/^-/, '')).slice(0, LONGEST_NAME).join('').replace(/-$/, '');
}

/** The document as a file that the command line reads too. */
export const fileOf = (document: RequestDocument): Blob =>
  new Blob([`${JSON.stringify(inOrder(document), null, 2)}\n`], { type: 'application/json' });

function inOrder(document: RequestDocument): RequestDocument {
  const rank = (key: string): number => (order.includes(key) ? order.indexOf(key) : order.length);
  return Object.fromEntries(Object.entries(document).toSorted(([one], [other]) => rank(one) - rank(other)));
}

/** Long enough for the slowest browser to have taken the file over. */
const KEPT_FOR = 60_000;

/** Hands a file to the browser's downloads. Browser only. */
export function download(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, KEPT_FOR);
}
