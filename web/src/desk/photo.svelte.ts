import { getContext, setContext } from 'svelte';
import type { Desk } from './desk.svelte.ts';

const KEY = Symbol('photo');

/** The photo of the cloth of the skirt on the table, as an address that a drawing can be filled from. */
export class ClothPhoto {
  address = $state.raw<string | null>(null);

  /** Follows the skirt on the table; to be called while a component is made. */
  constructor(desk: Desk) {
    // Followed by what counts only: a record changes with every frame of a drag.
    const hasPhoto = $derived(desk.skirt.record?.photo ?? false);
    const followed = $derived({ id: desk.skirt.id, hasPhoto, kept: desk.keeper.photosKept });
    $effect(() => {
      const { id } = followed;
      if (!followed.hasPhoto) {
        this.address = null;
        return;
      }
      let made: string | null = null;
      let left = false;
      void desk.keeper.photo(id).then((photo) => {
        if (left || !photo) return;
        made = URL.createObjectURL(photo);
        this.address = made;
      });
      return () => {
        left = true;
        if (made !== null) URL.revokeObjectURL(made);
      };
    });
  }
}

export const placePhoto = (photo: ClothPhoto): ClothPhoto => setContext(KEY, photo);
export const usePhoto = (): ClothPhoto => getContext<ClothPhoto>(KEY);
