import { once } from 'node:events';
import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { serve } from '@hono/node-server';
import type { TestProject } from 'vitest/node';
import { tableApp } from '../../server/src/app.ts';

declare module 'vitest' {
  interface ProvidedContext {
    address: string;
  }
}

const folder = process.env['TABLE'] ?? fileURLToPath(new URL('../../web/dist', import.meta.url));

/** Serves the built table at a free port of this machine while the tests run. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(`${folder}/index.html`)) throw new Error('The table is not built yet: npm run build');
  const server = serve({ fetch: tableApp(folder).fetch, port: 0, hostname: '127.0.0.1' });
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  project.provide('address', `http://localhost:${String(port)}`);
  return () =>
    new Promise<void>((done) => {
      server.close(() => {
        done();
      });
      if ('closeAllConnections' in server) server.closeAllConnections();
    });
}
