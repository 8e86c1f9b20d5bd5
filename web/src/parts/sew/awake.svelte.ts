/** Whether the screen stays on: it does, it was not allowed to, the browser can't at all, or nobody wants it to. */
type AwakeState = 'on' | 'refused' | 'never' | 'off';

/** Wanted until she says otherwise, and then wherever she comes back to the work. */
let isWanted = $state(true);

/**
 * Keeps the screen on while the view that makes it is there and seen. The browser lets go whenever the page is
 * hidden, so it is asked again when it is seen again. To be made while a component is made.
 */
export class Awake {
  state = $state.raw<AwakeState>('off');

  constructor() {
    $effect(() => {
      if (!isWanted) {
        this.state = 'off';
        return;
      }
      // Typed as always there, but older browsers and plain http pages have none.
      const lock = (navigator as { readonly wakeLock?: WakeLock }).wakeLock;
      if (!lock) {
        this.state = 'never';
        return;
      }
      let held: WakeLockSentinel | null = null;
      let isLeft = false;
      const take = async (): Promise<void> => {
        if (document.visibilityState !== 'visible' || (held && !held.released)) return;
        try {
          const taken = await lock.request('screen');
          if (isLeft) {
            void taken.release();
            return;
          }
          held = taken;
          this.state = 'on';
        } catch {
          if (!isLeft) this.state = 'refused';
        }
      };
      const onSeen = (): void => void take();
      document.addEventListener('visibilitychange', onSeen);
      void take();
      return () => {
        isLeft = true;
        document.removeEventListener('visibilitychange', onSeen);
        void held?.release();
      };
    });
  }

  get isWanted(): boolean {
    return isWanted;
  }
  set isWanted(wanted: boolean) {
    isWanted = wanted;
  }
}
