import type { Desk } from '../desk/desk.svelte.ts';

/**
 * Lets the browser keep the page itself, so that it opens with no network; without a secure origin it can't. A newer
 * version waits until it is asked for: the parts of this one must not go while it is in use.
 */
export async function keepOffline(desk: Desk): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const { serviceWorker } = navigator;
  try {
    const registration = await serviceWorker.register('sw.js');
    const offer = (): void => {
      const { waiting } = registration;
      if (!waiting || !serviceWorker.controller) return;
      desk.openNewer = () => void open(waiting, desk);
    };
    offer();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', offer);
    });
  } catch {
    // Everything else works; it is only not there without a network.
  }
}

/** Takes over when all is kept, and opens the page anew. */
async function open(waiting: ServiceWorker, desk: Desk): Promise<void> {
  await desk.keeper.keep();
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    location.reload();
  });
  waiting.postMessage({ type: 'SKIP_WAITING' });
}
