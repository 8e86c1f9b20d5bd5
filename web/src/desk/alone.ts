const TABLE = 'ribbonwright table';

/**
 * Does something if no other page of this table is open, and then holds the table until this page is closed.
 * Where the browser has no locks (no secure origin) it is left undone.
 */
export async function whenAlone(work: () => Promise<void>): Promise<void> {
  const { locks } = navigator as Partial<Navigator>;
  if (!locks) return;
  await locks.request(TABLE, { ifAvailable: true }, (lock) => (lock ? work() : undefined));
  void locks.request(TABLE, { mode: 'shared' }, () => new Promise<never>(() => undefined));
}
