import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { serve } from '@hono/node-server';
import { tableApp } from './app.ts';
import { portFrom } from './port.ts';

const folder = fileURLToPath(new URL('../../web/dist', import.meta.url));
const port = portFrom(process.env['PORT']);

if (port === null) {
  process.stderr.write(`PORT is a number from 0 to 65535, not "${process.env['PORT'] ?? ''}".\n`);
  process.exitCode = 2;
} else if (!existsSync(`${folder}/index.html`)) {
  process.stderr.write('The table is not built yet: npm run build\n');
  process.exitCode = 2;
} else {
  const server = serve({ fetch: tableApp(folder).fetch, port, hostname: '127.0.0.1' }, ({ port: taken }) => {
    process.stdout.write(`Ribbonwright is at http://localhost:${String(taken)}/\n`);
  });
  server.on('error', (error: NodeJS.ErrnoException) => {
    const what =
      error.code === 'EADDRINUSE' ? `port ${String(port)} is taken: PORT=8081 npm start` : error.message;
    process.stderr.write(`Could not start: ${what}\n`);
    process.exitCode = 2;
  });
}
