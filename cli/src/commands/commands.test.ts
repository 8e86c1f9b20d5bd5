import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { likely, plain, smallest, tell } from '../testing/tell.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ribbonwright-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const fileWith = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

const impossible = JSON.stringify({
  body: { waist: '30 in', hip: '40 in', waistToHem: '36 in', height: '66 in' },
  cut: { fullness: 1, leastFlare: '0 in', hemAtFold: '10 in' },
  cloth: { width: '18 in' },
  ribbons: { rows: 50, width: '1 in' },
});

describe('plan', () => {
  test('prints the card of the smallest request, with its marks', async () => {
    const { code, out, err } = await tell(['plan', '-'], { input: smallest });
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(plain(out)).toContain('30 in waist × 1½ ÷ 4 layers = 11¼ in');
    expect(plain(out)).toContain(
      '32 in finished length + 1¼ in casing + ¾ in hem + 1 in to straighten = 35 in',
    );
  });

  test('--json prints nothing but JSON, each length in millimetres and as it is shown', async () => {
    const { code, out } = await tell(['plan', fileWith('smallest.json', smallest), '--json']);
    expect(code).toBe(0);
    const plan = JSON.parse(out) as { marks: unknown; rows: unknown[]; lays: unknown[] };
    expect(plan.marks).toMatchObject({
      waistQuarter: { mm: 285.75, shown: '11¼\u00a0in' },
      hemQuarter: { mm: 381, shown: '15\u00a0in' },
      cutLength: { mm: 889, shown: '35\u00a0in' },
    });
    expect(plan.rows).toHaveLength(6);
    expect(plan.lays).toHaveLength(4);
  });

  test('a plan with problems is printed whole and ends with 1', async () => {
    const { code, out } = await tell(['plan', '-'], { input: impossible });
    expect(code).toBe(1);
    expect(out).toContain('Problem (Cut): It does not go on');
    expect(out).toContain('Shopping list');
  });

  test('--have answers what can be made of the cloth', async () => {
    const { code, out } = await tell(['plan', '-', '--have', '1.6 m'], { input: likely });
    expect(code).toBe(0);
    expect(plain(out)).toMatch(
      /From 63 in of cloth before its wash, laid the way that takes least, you can make the longest: \S+ in finished \([^)]+\) the fullest: /,
    );
  });

  test.each([
    ['inches', /From 7⅞ in to 157½ in would be right/],
    ['metric', /From 20 cm to 400 cm would be right/],
  ])('what is refused of a document is told in its measure: %s', async (measure, message) => {
    const input = JSON.stringify({ ...(JSON.parse(smallest) as object), measure, cloth: { width: '5 cm' } });
    const { code, err } = await tell(['plan', '-'], { input });
    expect(code).toBe(2);
    expect(plain(err)).toMatch(message);
  });

  test('--language and --measure win over the document', async () => {
    const { out } = await tell(['plan', '-', '--language', 'fr', '--measure', 'metric'], { input: likely });
    expect(out).toContain('Jupe à rubans');
    expect(plain(out)).toContain('= 34,29 cm, tracé à 34,4 cm');
  });

  test('colour only on a screen, and never under NO_COLOR', async () => {
    const input = impossible;
    expect((await tell(['plan', '-'], { input, isScreen: true })).out).toContain('\u001b[');
    expect((await tell(['plan', '-'], { input })).out).not.toContain('\u001b[');
    const quiet = await tell(['plan', '-'], { input, isScreen: true, environment: { NO_COLOR: '1' } });
    expect(quiet.out).not.toContain('\u001b[');
  });
});

describe('check', () => {
  test('says nothing but problems and cautions', async () => {
    const fine = await tell(['check', '-'], { input: likely });
    expect(fine).toMatchObject({ code: 0, out: 'No problems, no cautions.\n' });
    const cautions = await tell(['check', '-'], { input: smallest });
    expect(cautions.code).toBe(0);
    expect(cautions.out).toMatch(/Caution \(Body\)[\s\S]*No problems; 2 cautions\.\n$/);
    const problems = await tell(['check', '-'], { input: impossible });
    expect(problems.code).toBe(1);
    expect(problems.out).toMatch(/\d problems found\.\n$/);
  });
});

describe('example and schema', () => {
  test.each(['en', 'fr'])('the example in %s is a request without problems', async (language) => {
    const { code, out } = await tell(['example', '--language', language]);
    expect(code).toBe(0);
    expect((await tell(['check', '-'], { input: out })).code).toBe(0);
  });

  test('schemas are JSON Schema of the two documents', async () => {
    const request = JSON.parse((await tell(['schema'])).out) as { properties: object; required: string[] };
    expect(request.required).toEqual(['body']);
    const plan = JSON.parse((await tell(['schema', '--of', 'plan'])).out) as { properties: object };
    expect(Object.keys(plan.properties)).toEqual(
      expect.arrayContaining(['marks', 'rows', 'lays', 'notices']),
    );
  });
});

describe('papers', () => {
  const papers = ['card.pdf', 'lay.pdf', 'ribbons.pdf', 'sewing.pdf', 'shopping.pdf'];
  const environment = { SOURCE_DATE_EPOCH: '1767225600' };

  test('writes every paper and drawing, tells its progress, and leaves nothing else', async () => {
    const out = join(folder, 'new', 'papers');
    const {
      code,
      out: said,
      err,
    } = await tell(['papers', '-', '--out', out], { input: likely, environment });
    expect(code).toBe(0);
    expect(said).toBe('');
    expect(err).toContain('writing card.pdf');
    const files = readdirSync(out);
    expect(files).toEqual(expect.arrayContaining(papers));
    expect(files.filter((file) => file.endsWith('.svg'))).toHaveLength(21);
    expect(files).toEqual(expect.arrayContaining(['pieces.svg', 'panel.svg', 'fold-1.svg', 'fold-9.svg']));
    expect(files).toEqual(expect.arrayContaining(['worn-front.svg', 'worn-back.svg', 'worn-side.svg']));
    expect(files.filter((file) => file.startsWith('.'))).toEqual([]);
    expect(readFileSync(join(out, 'card.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('the same request on the same day is the same to the byte', async () => {
    const [one, two] = [join(folder, 'one'), join(folder, 'two')];
    for (const out of [one, two]) await tell(['papers', '-', '--out', out], { input: likely, environment });
    for (const file of readdirSync(one))
      expect(readFileSync(join(one, file)), file).toEqual(readFileSync(join(two, file)));
  });

  test('a plan with problems is on paper too, and ends with 1', async () => {
    const out = join(folder, 'impossible');
    const { code } = await tell(['papers', '-', '--out', out], { input: impossible, environment });
    expect(code).toBe(1);
    expect(readdirSync(out)).toEqual(expect.arrayContaining(papers));
  });

  test('where a file can’t be written, old papers stay and nothing half-written is left', async () => {
    const blocked = fileWith('blocked', 'a file where a folder should be');
    const { code, err } = await tell(['papers', '-', '--out', blocked], { input: likely, environment });
    expect(code).toBe(2);
    expect(err).toContain(`cannot write`);
    expect(readFileSync(blocked, 'utf8')).toBe('a file where a folder should be');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('what could not be run ends with 2 and a line for the person', () => {
  test.each<[string, string[], string | string[], RegExp]>([
    [
      'truncated JSON',
      ['plan', '-'],
      '{"body": {"waist": "28 in"',
      /is not JSON\. The reading stopped at line and column 1:27/,
    ],
    ['no JSON at all', ['plan', '-'], 'hello', /is not JSON/],
    ['nothing', ['plan', '-'], '', /is not JSON/],
    ['a list', ['plan', '-'], '[]', /should be one JSON object/],
    ['no body', ['plan', '-'], '{}', /body: is missing/],
    [
      'a negative waist',
      ['check', '-'],
      smallest.replace('30 in', '-30 in'),
      /body\.waist: "-30 in" is negative/,
    ],
    [
      'a zero',
      ['check', '-'],
      smallest.replace('30 in', '0 in'),
      /body\.waist: "0 in" is out of range\. From 9⅞ in to 98⅜ in/,
    ],
    [
      '10 km',
      ['check', '-'],
      smallest.replace('30 in', '10 km'),
      /body\.waist: "10 km" has a unit that is not known/,
    ],
    ['no unit', ['check', '-'], smallest.replace('30 in', '30'), /body\.waist: "30" has no unit/],
    [
      'an unknown key',
      ['check', '-'],
      smallest.replace('"waist"', '"wiast"'),
      /body\.wiast: "30 in" is not known here/,
    ],
    ['a wrong type', ['check', '-'], '{"body": 7}', /body: 7 is of the wrong kind\. It should be: a group/],
    ['no such file', ['plan', 'nowhere.json'], '', /there is no file nowhere\.json/],
    ['a folder', ['plan', '.'], '', /\. is a folder/],
    ['no file named', ['plan'], '', /the name of the request’s file is missing/],
    ['two files', ['plan', 'a', 'b'], '', /too many arguments/],
    ['no such command', ['plann'], '', /no such command: plann/],
    ['no such option', ['plan', '--fast'], '', /no such option: --fast/],
    ['an option without its value', ['papers', '-', '--out'], '', /option -o, --out needs a value/],
    ['paper there is none of', ['papers', '-', '--paper', 'a5'], '', /a5 is no choice/],
    ['a length that is none', ['plan', '-', '--have', 'lots'], smallest, /--have: "lots" is no length/],
    ['far too much input', ['plan', '-'], Array<string>(60).fill('x'.repeat(1_000_000)), /far too large/],
  ])('%s', async (_, argv, input, message) => {
    const { code, out, err } = await tell(argv, { input });
    expect(plain(err)).toMatch(message);
    expect(out).toBe('');
    expect(code).toBe(2);
  });

  test('in French where the terminal is', async () => {
    const { err } = await tell(['plan', 'nulle-part.json'], { environment: { LANG: 'fr_CA.UTF-8' } });
    expect(err).toContain('nulle-part.json');
    expect(err).not.toContain('there is no file');
  });

  test('a file of 50 MB is refused without being read', async () => {
    const file = join(folder, 'large.json');
    writeFileSync(file, Buffer.alloc(50_000_000, 0x20));
    const { code, err } = await tell(['check', file]);
    expect(code).toBe(2);
    expect(err).toContain('far too large');
  });
});

describe('help', () => {
  test('every command shows examples and exit codes, and ends with 0', async () => {
    for (const command of ['plan', 'papers', 'lay', 'check', 'example', 'schema']) {
      const { code, out } = await tell([command, '--help']);
      expect(code, command).toBe(0);
      expect(out, command).toMatch(/Usage:[\s\S]*Examples:\n {2}ribbonwright [\s\S]*Ends with 0/);
    }
  });

  test('without a command, help is no result', async () => {
    const { code, out, err } = await tell([]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('Commands:');
  });
});

describe('the built command, as a maker runs it', () => {
  const bin = join(import.meta.dirname, '../../bin/ribbonwright.js');
  const built = existsSync(join(import.meta.dirname, '../../dist/main.js'));

  test.skipIf(!built)('reads a pipe, prints the plan, and a closed pipe is no fault', () => {
    const piped = spawnSync('sh', ['-c', `node "$0" example | node "$0" plan - | head -1`, bin], {
      encoding: 'utf8',
    });
    expect(piped.stdout).toBe('Ribbon skirt for Robin\n');
    expect(piped.stderr).toBe('');
  });

  test.skipIf(!built)('tells its version', () => {
    const { stdout, status } = spawnSync(process.execPath, [bin, '--version'], { encoding: 'utf8' });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
