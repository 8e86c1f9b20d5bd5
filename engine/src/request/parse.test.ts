import { describe, expect, test } from 'vitest';
import { inches, mm } from '../units/index.ts';
import {
  LARGEST_REQUEST,
  parseRequest,
  parseRequestText,
  type ParsedRequest,
  type RequestError,
} from './index.ts';

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const requestIn = (parsed: ParsedRequest) => {
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return parsed.request;
};
const errorsIn = (parsed: ParsedRequest): readonly RequestError[] => (parsed.ok ? [] : parsed.errors);

describe('the smallest request', () => {
  test('is three measurements', () => {
    const request = requestIn(parseRequest({ body }));
    expect(request.body).toMatchObject({ waist: inches(29), hip: inches(36), waistToHem: inches(31) });
    expect(request).toMatchObject({ version: 1, language: 'en', measure: 'inches', paper: 'letter' });
  });

  test('reads the same from text, with a byte order mark or without, and with white space about', () => {
    const text = JSON.stringify({ body });
    for (const each of [text, `\uFEFF${text}`, `\n  ${text}\n`])
      expect(parseRequestText(each)).toEqual(parseRequest({ body }));
  });

  test('waist and length are asked for by name, the hip is not: it may be estimated', () => {
    for (const key of Object.keys(body)) {
      const rest = Object.fromEntries(Object.entries(body).filter(([name]) => name !== key));
      if (key === 'hip') expect(requestIn(parseRequest({ body: rest })).body.hip).toBeUndefined();
      else
        expect(errorsIn(parseRequest({ body: rest }))).toEqual([
          { path: `body.${key}`, code: 'missing', read: '', params: {} },
        ]);
    }
    expect(errorsIn(parseRequest({})).map(({ path, code }) => [path, code])).toEqual([['body', 'missing']]);
  });
});

describe('units', () => {
  test('a bare number takes the document’s units; without them it is refused', () => {
    expect(
      requestIn(parseRequest({ units: 'cm', body: { waist: 74, hip: '92', waistToHem: 79 } })).body.hip,
    ).toBe(920);
    expect(errorsIn(parseRequest({ body: { ...body, waist: 29 } }))).toEqual([
      { path: 'body.waist', code: 'length.noUnit', read: '29', params: {} },
    ]);
  });

  test('decide the system of measure where it is not told; so does the language', () => {
    const measure = (raw: object) => requestIn(parseRequest({ body, ...raw })).measure;
    expect([
      measure({ units: 'cm' }),
      measure({ units: 'ft' }),
      measure({ language: 'fr' }),
      measure({}),
    ]).toEqual(['metric', 'inches', 'metric', 'inches']);
    expect(measure({ units: 'cm', measure: 'inches' })).toBe('inches');
    expect(measure({ language: 'fr', units: 'in' })).toBe('inches');
  });

  test('the usual figures are each trade’s own: a metric maker turns 2 cm, not ¾ in', () => {
    const { cut, mark, paper, cloth } = requestIn(parseRequest({ body, measure: 'metric' }));
    expect([cut.hem, mark, paper, cloth.width]).toEqual([20, 2, 'a4', 1120]);
    const other = requestIn(parseRequest({ body, measure: 'inches' }));
    expect([other.cut.hem, other.mark, other.paper, other.cloth.width]).toEqual([
      inches(0.75),
      inches(1 / 8),
      'letter',
      inches(44),
    ]);
  });

  test('a value never depends on the language', () => {
    const waist = '72,1 cm';
    for (const language of ['en', 'fr'])
      expect(requestIn(parseRequest({ language, body: { ...body, waist } })).body.waist).toBe(mm(721));
  });
});

const cases: readonly (readonly [string, unknown, string, string])[] = [
  ['a unit nobody knows', { body: { ...body, waist: '10 km' } }, 'body.waist', 'length.unknownUnit'],
  ['a negative length', { body: { ...body, hip: '-36 in' } }, 'body.hip', 'length.negative'],
  ['no hip at all', { body: { ...body, hip: '0 in' } }, 'body.hip', 'lengthRange'],
  ['a hip of ten metres', { body: { ...body, hip: '10 m' } }, 'body.hip', 'lengthRange'],
  ['not a number', { units: 'in', body: { ...body, hip: NaN } }, 'body.hip', 'wrongShape'],
  ['an endless hip', { units: 'in', body: { ...body, hip: Infinity } }, 'body.hip', 'wrongShape'],
  ['words', { body: { ...body, hip: 'wide' } }, 'body.hip', 'length.notALength'],
  ['nothing in a field', { body: { ...body, hip: '' } }, 'body.hip', 'length.empty'],
  ['a thousand’s comma', { body: { ...body, hip: '1,000.5 mm' } }, 'body.hip', 'length.thousandsSeparator'],
  ['an eighth of nothing', { body: { ...body, hip: '36 1/0 in' } }, 'body.hip', 'length.zeroDenominator'],
  ['null for a length', { body: { ...body, hip: null } }, 'body.hip', 'wrongShape'],
  ['a list for a length', { body: { ...body, hip: ['36 in'] } }, 'body.hip', 'wrongShape'],
  ['a list for a body', { body: [] }, 'body', 'wrongType'],
  ['null for a body', { body: null }, 'body', 'wrongType'],
  // The cut says which waist it is, and a list is none.
  ['a list for a waist', { body, cut: { kind: 'circle' }, waist: [] }, 'waist', 'wrongType'],
  ['an age in words', { body: { ...body, age: 'six' } }, 'body.age', 'wrongType'],
  ['an age below birth', { body: { ...body, age: -1 } }, 'body.age', 'outOfRange'],
  ['a pace nobody walks', { body: { ...body, pace: 'gallop' } }, 'body.pace', 'notOneOf'],
  ['a way to wear it that is none', { body: { ...body, wears: 'lying' } }, 'body.wears', 'notOneOf'],
  [
    'a level at no place of the waist',
    { body: { ...body, levels: { top: '1 m' } } },
    'body.levels.top',
    'unknownKey',
  ],
  [
    'a level above any head',
    { body: { ...body, levels: { front: '3 m' } } },
    'body.levels.front',
    'lengthRange',
  ],
  ['a level that is one length', { body: { ...body, levels: '98 cm' } }, 'body.levels', 'wrongType'],
  ['half a hip', { body: { ...body, halves: { left: '18 in' } } }, 'body.halves.right', 'missing'],
  [
    'a half as a whole',
    { body: { ...body, halves: { left: '2 m', right: '18 in' } } },
    'body.halves.left',
    'lengthRange',
  ],
  ['a size with one end', { body: { ...body, size: { from: '96 cm' } } }, 'body.size.to', 'missing'],
  [
    'a size without its unit',
    { body: { ...body, size: { from: 96, to: '100 cm' } } },
    'body.size.from',
    'length.noUnit',
  ],
  ['a hip line at the feet', { body: { ...body, hipDepth: '1 m' } }, 'body.hipDepth', 'lengthRange'],
  [
    'a second take gone wrong',
    { body: { ...body, second: { hip: '-1 in' } } },
    'body.second.hip',
    'length.negative',
  ],
  ['a language there is not', { body, language: 'xx' }, 'language', 'notOneOf'],
  ['a unit for the document that is none', { body, units: 'km' }, 'units', 'notOneOf'],
  ['a name that is a number', { body, name: 5 }, 'name', 'wrongType'],
  ['a name as long as a page', { body, name: 'x'.repeat(2000) }, 'name', 'tooLong'],
  ['a mark nobody chalks', { body, mark: '1/7 in' }, 'mark', 'notOneOf'],
  ['a cut there is not', { body, cut: { kind: 'sack' } }, 'cut.kind', 'notOneOf'],
  ['fullness as text', { body, cut: { fullness: '1.5' } }, 'cut.fullness', 'wrongType'],
  ['less cloth than body', { body, cut: { fullness: 0.5 } }, 'cut.fullness', 'outOfRange'],
  ['half a width', { body, cut: { kind: 'gathered', widths: 2.5 } }, 'cut.widths', 'wrongType'],
  [
    'an elastic share past all of it',
    { body, waist: { elasticShare: '120 %' } },
    'waist.elasticShare',
    'percentRange',
  ],
  [
    'a share that is no percentage',
    { body, waist: { elasticShare: 'most' } },
    'waist.elasticShare',
    'percent',
  ],
  ['fewer rows than none', { body, ribbons: { rows: -1 } }, 'ribbons.rows', 'outOfRange'],
  ['rows in words', { body, ribbons: { rows: 'six' } }, 'ribbons.rows', 'wrongShape'],
  [
    'one row of a list',
    { body, ribbons: { rows: [{}, { width: '-1 in' }] } },
    'ribbons.rows[1].width',
    'length.negative',
  ],
  [
    'a colour nobody named',
    { body, ribbons: { colours: ['red', 'mauvish'] } },
    'ribbons.colours[1]',
    'colour',
  ],
  ['no colours', { body, ribbons: { colours: [] } }, 'ribbons.colours', 'outOfRange'],
  [
    'gaps that do not match the rows',
    { body, ribbons: { spacing: 'by hand', gaps: ['1 in'] } },
    'ribbons.gaps',
    'gaps',
  ],
  [
    'touching rows that do not fit their shape',
    { body, ribbons: { rows: [{ touching: [{ width: '-1 in' }, {}] }] } },
    'ribbons.rows[0].touching',
    'wrongShape',
  ],
  [
    'cloth that vanishes in the wash',
    { body, cloth: { change: { lengthwise: 100 } } },
    'cloth.change.lengthwise',
    'percentRange',
  ],
  [
    'half a range',
    { body, cloth: { change: { lengthwise: { from: 2 } } } },
    'cloth.change.lengthwise.to',
    'missing',
  ],
  [
    'a square measured once',
    { body, cloth: { change: { crosswise: { before: '50 cm' } } } },
    'cloth.change.crosswise.after',
    'missing',
  ],
  [
    'a square measured wrongly',
    { body, cloth: { change: { crosswise: { before: '50 cm', after: '-1 cm' } } } },
    'cloth.change.crosswise.after',
    'length.negative',
  ],
  [
    'cloth that is all selvage',
    { body, cloth: { width: '25 cm', selvage: '6 cm' } },
    'cloth.width',
    'lengthRange',
  ],
  [
    'a square that all but vanished',
    { body, cloth: { change: { lengthwise: { before: '50 cm', after: '20 cm' } } } },
    'cloth.change.lengthwise.after',
    'lengthRange',
  ],
  ['a price below nothing', { body, cloth: { price: -1 } }, 'cloth.price', 'outOfRange'],
  ['a price in words', { body, cloth: { price: 'cheap' } }, 'cloth.price', 'price'],
  ['money there is not', { body, supplies: { currency: 'XXQ' } }, 'supplies.currency', 'currency'],
  ['yes for a boolean', { body, sewing: { overlocker: 'yes' } }, 'sewing.overlocker', 'wrongType'],
  ['a version before the first', { body, version: 0 }, 'version', 'notOneOf'],
  ['a version from the future', { body, version: 7 }, 'version', 'newerVersion'],
];

describe('what is refused', () => {
  test.each(cases)('%s', (_, raw, path, code) => {
    const errors = errorsIn(parseRequest(raw));
    expect(errors.map((error) => [error.path, error.code])).toEqual([[path, code]]);
    const [error] = errors;
    expect(error?.read.length).toBeLessThan(70);
    if (code !== 'missing') expect(error?.read).not.toBe('');
  });

  test('all faults are told at once, each with what was read', () => {
    const errors = errorsIn(
      parseRequest({ body: { waist: '10 km', hip: '36 in' }, cut: { fullness: 9 }, hat: true }),
    );
    expect(errors.map(({ path, code, read }) => [path, code, read])).toEqual([
      ['body.waist', 'length.unknownUnit', '"10 km"'],
      ['body.waistToHem', 'missing', ''],
      ['cut.fullness', 'outOfRange', '9'],
      ['hat', 'unknownKey', 'true'],
    ]);
  });

  test('a range of lengths says its bounds', () => {
    const [error] = errorsIn(parseRequest({ body: { ...body, hip: '10 m' } }));
    expect(error?.params).toEqual({ least: 300, most: 2500 });
  });

  test('the language of the errors is the document’s, where that can be read', () => {
    for (const [language, expected] of [
      ['fr', 'fr'],
      ['xx', 'en'],
      [undefined, 'en'],
    ] as const)
      expect(parseRequest({ language })).toMatchObject({ ok: false, language: expected });
  });
});

describe('unknown keys', () => {
  test.each([
    ['', { body, hat: 1 }, 'hat'],
    ['body', { body: { ...body, bust: '36 in' } }, 'bust'],
    ['body.second', { body: { ...body, second: { bust: 1 } } }, 'bust'],
    ['cut', { body, cut: { flare: 1 } }, 'flare'],
    ['waist', { body, waist: { cord: 1 } }, 'cord'],
    ['ribbons', { body, ribbons: { row: 6 } }, 'row'],
    ['ribbons.rows[0]', { body, ribbons: { rows: [{ colour: 'red', widht: '1 in' }] } }, 'widht'],
    ['cloth', { body, cloth: { fibre: 'cotton' } }, 'fibre'],
    ['cloth.change', { body, cloth: { change: { both: 5 } } }, 'both'],
    ['cloth.colour', { body, cloth: { colour: { name: 'sea', hex: '#14716f', rgb: 1 } } }, 'rgb'],
    ['supplies', { body, supplies: { shop: 1 } }, 'shop'],
    ['supplies.thread', { body, supplies: { thread: { silk: 1 } } }, 'silk'],
    ['supplies.notions', { body, supplies: { notions: { beads: 1 } } }, 'beads'],
    ['sewing', { body, sewing: { help: 1 } }, 'help'],
    ['teachings', { body, teachings: { text: 'x', secret: 1 } }, 'secret'],
  ])('in "%s" are refused by name, beside those that are known', (at, raw, key) => {
    const [error, ...others] = errorsIn(parseRequest(raw));
    expect(others).toEqual([]);
    expect(error).toMatchObject({ path: at === '' ? key : `${at}.${key}`, code: 'unknownKey' });
    const known = String(error?.params['known']).split(', ');
    expect(known.length).toBeGreaterThan(0);
    expect(known).not.toContain('');
    expect(known).not.toContain(key);
  });

  test('the known ones are those of the cut that was chosen', () => {
    const known = (cut: object) =>
      String(errorsIn(parseRequest({ body, cut: { ...cut, x: 1 } }))[0]?.params['known']).split(', ');
    expect(known({ kind: 'gathered' })).toContain('widths');
    expect(known({ kind: 'gathered' })).not.toContain('leastFlare');
    expect(known({})).toContain('leastFlare');
    expect(known({})).not.toContain('widths');
    const [error] = errorsIn(parseRequest({ body, cut: { kind: 'gathered', leastFlare: '2 in' } }));
    expect(error).toMatchObject({ path: 'cut.leastFlare', code: 'unknownKey' });
  });

  test('__proto__ is a key like any other, and changes nothing', () => {
    const parsed = parseRequestText('{"__proto__": {"language": "fr"}, "body": {"__proto__": 5}}');
    expect(errorsIn(parsed).map(({ path, code }) => [path, code])).toEqual([
      ['body.waist', 'missing'],
      ['body.waistToHem', 'missing'],
      ['body.__proto__', 'unknownKey'],
      ['__proto__', 'unknownKey'],
    ]);
    expect(parsed).toMatchObject({ language: 'en' });
    expect(({} as Record<string, unknown>)['language']).toBeUndefined();
  });
});

describe('what is no request at all', () => {
  test.each([
    ['null', 'null'],
    ['a list', '[]'],
    ['a number', '5'],
    ['a text', '"skirt"'],
    ['a list nested past all reading', `${'['.repeat(200_000)}${']'.repeat(200_000)}`],
  ])('%s', (_, text) => {
    expect(errorsIn(parseRequestText(text)).map(({ path, code }) => [path, code])).toEqual([
      ['', 'notAnObject'],
    ]);
  });

  test.each([
    ['bigint', 1n],
    ['function', () => 1],
    ['symbol', Symbol('s')],
    ['undefined', undefined],
  ])('a %s', (_, raw) => {
    expect(errorsIn(parseRequest(raw)).map(({ code }) => code)).toEqual(['notAnObject']);
  });

  test('nested past all reading inside a field', () => {
    const deep = `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`;
    expect(errorsIn(parseRequestText(`{"body": ${deep}}`)).map(({ path }) => path)).toEqual([
      'body.waist',
      'body.waistToHem',
      'body.a',
    ]);
  });

  test('a ring of objects', () => {
    const ring: Record<string, unknown> = { body };
    ring['ring'] = ring;
    expect(errorsIn(parseRequest(ring)).map(({ path, code }) => [path, code])).toEqual([
      ['ring', 'unknownKey'],
    ]);
  });

  test('more than a million characters', () => {
    const text = JSON.stringify({ body, name: 'x'.repeat(LARGEST_REQUEST) });
    expect(errorsIn(parseRequestText(text))).toEqual([
      { path: '', code: 'tooLarge', read: '', params: { size: text.length, most: LARGEST_REQUEST } },
    ]);
  });
});
