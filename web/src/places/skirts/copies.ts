import type { RequestDocument } from '@ribbonwright/engine';
import type { Desk } from '../../desk/desk.svelte.ts';
import { newSkirt } from '../../desk/newSkirt.ts';
import type { SkirtRecord } from '../../store/index.ts';

/** Adds a skirt to those that are kept. */
export function add(desk: Desk, document: RequestDocument): SkirtRecord {
  const skirt = newSkirt(document);
  desk.keeper.change('skirts', skirt.id, [{ path: [], value: skirt }]);
  return skirt;
}

/** The same skirt under another name, to go its own way. */
export function copy(desk: Desk, of: SkirtRecord, name: string): SkirtRecord {
  // A document's name has room for 120 letters.
  return again(desk, of, newSkirt({ ...of.document, name: name.slice(0, 120) }));
}

/** The skirt as it is now, kept beside the one that is worked on. */
export function keepVersion(desk: Desk, of: SkirtRecord, version: string): SkirtRecord {
  return again(desk, of, newSkirt(of.document, { family: of.family, version }));
}

function again(desk: Desk, of: SkirtRecord, fresh: SkirtRecord): SkirtRecord {
  const skirt = { ...fresh, photo: of.photo };
  desk.keeper.change('skirts', skirt.id, [{ path: [], value: skirt }]);
  if (of.photo)
    void desk.keeper
      .photo(of.id)
      .then((photo) => desk.keeper.keepPhoto(skirt.id, photo))
      .catch(() => {
        desk.keeper.set('skirts', skirt.id, [{ path: ['photo'], value: false }]);
      });
  return skirt;
}
