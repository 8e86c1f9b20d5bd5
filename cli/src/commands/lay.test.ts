import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { likely, plain, tell } from '../testing/tell.ts';

let folder = '';
let example = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'ribbonwright-'));
  example = (await tell(['example', '--of', 'class'])).out;
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const none = JSON.stringify({
  cloths: { red: { bolt: false, lengths: [{ length: '1 yd' }] } },
  skirts: [
    { wearer: 'Robin', body },
    { wearer: 'Sam', body },
  ],
});

interface LayJson {
  readonly cloths: readonly {
    readonly skirts: readonly string[];
    readonly chosen: string;
    readonly ways: readonly { readonly way: string; readonly toBuy: { readonly mm: number } }[];
  }[];
}

describe('lay', () => {
  test('shows every way to lay a class side by side, what to buy, and what the shelf is enough for', async () => {
    const { code, out, err } = await tell(['lay', '-', '--seconds', '1'], { input: example });
    expect(err).toMatch(/^[^\n]* · to buy: [^\n]*\n$/);
    expect(code).toBe(0);
    for (const words of ['Saturday class', 'Robin, Sam, Alex', 'double fold', 'open, one layer', 'To buy'])
      expect(out).toContain(words);
    expect(plain(out)).toMatch(/navy: \d skirts? in the order of the list: /);
  });

  test('a skirt by itself is laid too, and never takes more than by hand', async () => {
    const { code, out } = await tell(['lay', '-', '--seconds', '1', '--json'], { input: likely });
    expect(code).toBe(0);
    const { cloths } = JSON.parse(out) as LayJson;
    const [cloth] = cloths;
    expect(cloths).toHaveLength(1);
    expect(cloth?.ways.map(({ way }) => way)).toContain(cloth?.chosen);
    const plan = JSON.parse((await tell(['plan', '-', '--json'], { input: likely })).out) as {
      readonly lays: readonly { readonly toBuy: { readonly mm: number } }[];
    };
    const least = Math.min(...plan.lays.map(({ toBuy }) => toBuy.mm));
    const chosen = cloth?.ways.find(({ way }) => way === cloth.chosen);
    expect(chosen?.toBuy.mm).toBeLessThanOrEqual(least);
  });

  test('stopped, it shows the best so far', async () => {
    const began = performance.now();
    const { code, out, err } = await tell(['lay', '-', '--seconds', '600'], {
      input: example,
      interrupts: true,
    });
    expect(performance.now() - began).toBeLessThan(20_000);
    expect(code).toBe(0);
    // Stopped at once, or while it looks at the first cloth.
    expect(err).toMatch(
      /^Stopped\. This is the best so far\. Not looked at yet, and laid by hand: (navy, )?berry\.\n$/,
    );
    expect(out).toContain('To buy');
  });

  test('progress is a line on a screen only, and gone at the end', async () => {
    const { err } = await tell(['lay', '-', '--seconds', '1'], { input: example, isScreen: true });
    expect(plain(err)).toMatch(/of 1 s · (navy|berry), /);
    expect(err.endsWith('\r\u001b[K')).toBe(true);
  });

  test('writes the layouts, a drawing for each length of cloth', async () => {
    const out = join(folder, 'laid');
    await tell(['lay', '-', '--seconds', '0', '--out', out], { input: example });
    const files = readdirSync(out).sort();
    expect(files).toContain('lay.pdf');
    expect(files).toContain('lay-1-1.svg');
    expect(readFileSync(join(out, 'lay.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('where the cloth is not enough it ends with 1 and says for whom', async () => {
    const { code, out } = await tell(['lay', '-', '--seconds', '0'], { input: none });
    expect(code).toBe(1);
    expect(plain(out)).toMatch(/Sam: 1?.* of cloth is needed/);
    expect(plain(out)).not.toContain('what is at hand, for');
  });

  test('those it is enough for are laid there and drawn', async () => {
    const folderOf = join(folder, 'some');
    const some = none.replace('1 yd', '3 yd');
    const { code, out } = await tell(['lay', '-', '--seconds', '0', '--out', folderOf], { input: some });
    expect(code).toBe(1);
    expect(plain(out)).toContain('red, what is at hand, for Robin: ');
    expect(plain(out)).toMatch(/From the length at hand, 108 in: \d/);
    expect(readdirSync(folderOf)).toEqual(['cards.pdf', 'lay.pdf', 'shelf-1.svg']);
  });

  test('what is at hand is laid in the one way that is asked for, and what nothing is cut from is told', async () => {
    const lengths = [
      { name: 'end', length: '3 yd' },
      { name: 'rag', length: '10 in' },
    ];
    const input = JSON.stringify({
      ...(JSON.parse(none) as object),
      cloths: { red: { bolt: false, lengths } },
    });
    const { out } = await tell(['lay', '-', '--seconds', '0', '--way', 'lengthwise fold'], { input });
    expect(plain(out)).toContain('red, what is at hand, for Robin: lengthwise fold');
    expect(plain(out)).toContain('Nothing is cut from the length at hand “rag”, 10 in.');
  });

  test('of a class of one too it is told what can be made from what is at hand', async () => {
    const cloths = { red: { lengths: [{ length: '4 yd' }] } };
    const input = JSON.stringify({ cloths, skirts: [{ wearer: 'Robin', body }] });
    const { out } = await tell(['lay', '-', '--seconds', '0'], { input });
    expect(plain(out)).toContain('red: 1 skirt in the order of the list: Robin');
  });

  test.each([
    ['a skirt', () => likely],
    ['a class', () => example],
    ['a class that names no cloth', () => JSON.stringify({ skirts: [{ body }, { body }] })],
    [
      'a cloth described with its skirt',
      () => {
        const contrast = [{ pieces: ['tier 1'], cloth: { name: 'linen', width: '55 in' } }];
        return JSON.stringify({ skirts: [{ body, cut: { kind: 'tiered' }, contrast }] });
      },
    ],
  ])('the one way that is asked for of %s is taken, though another takes less', async (_, inputOf) => {
    const { out } = await tell(['lay', '-', '--seconds', '0', '--way', 'crosswise fold', '--json'], {
      input: inputOf(),
    });
    const { cloths } = JSON.parse(out) as { cloths: { chosen: string }[] };
    expect(new Set(cloths.map(({ chosen }) => chosen))).toEqual(new Set(['crosswise fold']));
  });

  test.each<[string[], RegExp]>([
    [['--seconds', 'soon'], /--seconds: "soon" is no number from 0 to 86400/],
    [['--seconds', '-1'], /--seconds: "-1" is no number/],
    [['--seed', '1.5'], /--seed: "1\.5" is no number/],
    [['--way', 'sideways'], /sideways is no choice for -w, --way: double fold/],
  ])('%j is refused', async (options, message) => {
    const { code, err } = await tell(['lay', '-', ...options], { input: example });
    expect(code).toBe(2);
    expect(plain(err)).toMatch(message);
  });

  test('a malformed class is refused field by field', async () => {
    const { code, err } = await tell(['lay', '-'], {
      input: JSON.stringify({ skirts: [{ body }, { body: { ...body, hip: '-3 in' } }] }),
    });
    expect(code).toBe(2);
    expect(err).toContain('skirts[1].body.hip: "-3 in" is negative');
  });
});

describe('a class, to the other commands', () => {
  test('check tells of whose skirt each notice is', async () => {
    const { code, out } = await tell(['check', '-'], { input: example });
    expect(code).toBe(0);
    expect(out).toMatch(/Caution \(Jo · Cut\)/);
    expect((await tell(['check', '-'], { input: none })).code).toBe(1);
  });

  test('papers writes a lay sheet with whose each piece is', async () => {
    const out = join(folder, 'papers');
    const { code } = await tell(['papers', '-', '--out', out, '--paper', 'a4'], { input: example });
    expect(code).toBe(0);
    const svg = readdirSync(out).find((file) => file.endsWith('-1.svg')) ?? '';
    expect(readdirSync(out)).toContain('lay.pdf');
    expect(readFileSync(join(out, svg), 'utf8')).toContain('<svg');
  });

  test('papers that are searched carry what was found, stopped or not', async () => {
    const out = join(folder, 'searched');
    const { code, err } = await tell(['papers', '-', '--seconds', '600', '--out', out], {
      input: example,
      interrupts: true,
    });
    expect(code).toBe(0);
    expect(err).toContain('Stopped. This is the best so far.');
    expect(readdirSync(out)).toContain('lay.pdf');
  });

  test('plan is of one skirt', async () => {
    const { code, err } = await tell(['plan', '-'], { input: example });
    expect(code).toBe(2);
    expect(err).toContain('is a class: use lay, papers or check');
  });

  test.each(['en', 'fr'])('the example in %s has no problems', async (language) => {
    const { out } = await tell(['example', '--of', 'class', '--language', language]);
    expect((await tell(['check', '-'], { input: out })).code).toBe(0);
  });

  test('its schema asks for skirts', async () => {
    const schema = JSON.parse((await tell(['schema', '--of', 'class'])).out) as { required: string[] };
    expect(schema.required).toEqual(['skirts']);
  });
});

describe('papers of a skirt', () => {
  const chalked = (out: string): string[] => readdirSync(out).filter((file) => /^lay-\d/.test(file));

  test('carry the searched lay where a search is asked for, and only there', async () => {
    const [hand, searched] = [join(folder, 'hand'), join(folder, 'closer')];
    await tell(['papers', '-', '--out', hand], { input: likely });
    const { code, err } = await tell(['papers', '-', '--seconds', '1', '--way', 'open', '--out', searched], {
      input: likely,
      isScreen: true,
    });
    expect(code).toBe(0);
    expect(plain(err)).toMatch(/of 1 s · .*open, one layer/);
    expect(chalked(hand)).toEqual([]);
    expect(chalked(searched)).toEqual(['lay-1-1.svg']);
    const sizeOf = (out: string): number => readFileSync(join(out, 'lay.pdf')).length;
    expect(sizeOf(searched)).not.toBe(sizeOf(hand));
  });

  test('a search that is asked for wrongly is refused, as by lay', async () => {
    const { code, err } = await tell(['papers', '-', '--seed', '1.5'], { input: likely });
    expect(code).toBe(2);
    expect(plain(err)).toMatch(/--seed: "1\.5" is no number/);
  });
});

describe('the built command, as a maker runs it', () => {
  const bin = join(import.meta.dirname, '../../bin/ribbonwright.js');
  const built = existsSync(join(import.meta.dirname, '../../dist/laying/worker.js'));

  test.skipIf(!built)('Ctrl-C stops a long search with the best so far', async () => {
    const file = join(folder, 'one.class.json');
    writeFileSync(file, example);
    const child = spawn(process.execPath, [bin, 'lay', file, '--seconds', '600']);
    let [out, err] = ['', ''];
    child.stdout.on('data', (data: Buffer) => (out += data.toString()));
    child.stderr.on('data', (data: Buffer) => (err += data.toString()));
    // It says that it has begun.
    child.stderr.once('data', () => child.kill('SIGINT'));
    const code = await new Promise((resolve) => child.on('exit', resolve));
    expect(code).toBe(0);
    expect(err).toContain('Stopped.');
    expect(out).toContain('To buy');
  });
});
