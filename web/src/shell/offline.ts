/** Lets the browser keep the page itself, so that it opens with no network. Without a secure origin it can't. */
export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  try {
    await navigator.serviceWorker.register('sw.js');
  } catch {
    // Everything else works; it is only not there without a network.
  }
}
