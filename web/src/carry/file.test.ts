import { exampleRequest, parseRequestText } from '@ribbonwright/engine';
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { anyRequest } from '../../../engine/src/testing/requests.ts';
import { runs } from '../../../engine/src/testing/runs.ts';
import { download, fileNameOf, fileOf } from './file.ts';

describe('what a file is called', () => {
  test.each([
    [{ wearer: 'Robin' }, 'robin.skirt.json'],
    [{ name: 'For the feast', wearer: 'Robin' }, 'for-the-feast.skirt.json'],
    [{ name: ' ', wearer: 'Robin' }, 'robin.skirt.json'],
    [{ name: 'Jupe d’été à œillets' }, 'jupe-dete-a-oeillets.skirt.json'],
    [{ name: 'Robin / #2 <draft>: "a"' }, 'robin-2-draft-a.skirt.json'],
    [{ name: '../../etc' }, 'etc.skirt.json'],
    [{ name: '.hidden.' }, 'hidden.skirt.json'],
    [{ name: 'ᓀᐦᐃᔭᐤ' }, 'ᓀᐦᐃᔭᐤ.skirt.json'],
    [{ name: 'CON' }, 'ribbon-skirt-con.skirt.json'],
    [{ name: '???' }, 'ribbon-skirt.skirt.json'],
    [{ name: 7 }, 'ribbon-skirt.skirt.json'],
    [{}, 'ribbon-skirt.skirt.json'],
  ])('%j', (document, name) => {
    expect(fileNameOf(document)).toBe(name);
  });

  test('any name whatever gives one that every file system takes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (name) => {
        const file = fileNameOf({ name });
        expect(file).toMatch(/^[^-\s.][^\s./\\:*?"<>|\p{C}]*\.skirt\.json$/u);
        expect(Buffer.byteLength(file)).toBeLessThanOrEqual(255);
      }),
      { numRuns: runs(500) },
    );
  });
});

describe('what is in a file', () => {
  test('two spaces, a line end, and the keys in the order of the job', async () => {
    const text = await fileOf({
      cut: { kind: 'flared' },
      wearer: 'Robin',
      body: {},
      mine: 1,
      version: 1,
    }).text();
    expect(text).toBe(
      '{\n  "version": 1,\n  "wearer": "Robin",\n  "body": {},\n  "cut": {\n    "kind": "flared"\n  },\n  "mine": 1\n}\n',
    );
  });

  test('every document comes back as it was, and the command line reads it', async () => {
    await fc.assert(
      fc.asyncProperty(anyRequest, async (document) => {
        const text = await fileOf(document).text();
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(document)));
        expect(parseRequestText(text).ok).toBe(true);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('download', () => {
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  test('clicks a link to the file, takes it away, and lets the file go later', () => {
    vi.useFakeTimers();
    const revoked = vi.spyOn(URL, 'revokeObjectURL');
    const link = { href: '', download: '', click: vi.fn(), remove: vi.fn() };
    vi.stubGlobal('document', { createElement: () => link, body: { append: vi.fn() } });
    download('robin.skirt.json', fileOf(exampleRequest('en')));
    expect(link.download).toBe('robin.skirt.json');
    expect(link.href).toMatch(/^blob:/);
    expect(link.click).toHaveBeenCalledOnce();
    expect(link.remove).toHaveBeenCalledOnce();
    expect(revoked).not.toHaveBeenCalled();
    vi.runAllTimers();
    expect(revoked).toHaveBeenCalledWith(link.href);
  });
});
