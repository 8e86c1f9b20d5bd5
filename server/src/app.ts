import { serveStatic } from '@hono/node-server/serve-static';
import { Hono } from 'hono';
import { secureHeaders } from 'hono/secure-headers';
import { contentSecurityPolicy } from './policy.ts';

/**
 * Hands out the built table, and nothing else. The page may load and reach this address only.
 *
 * @param folder where the built table lies.
 */
export function tableApp(folder: string): Hono {
  const app = new Hono();
  app.use(
    secureHeaders({
      referrerPolicy: 'no-referrer',
      xFrameOptions: 'DENY',
      strictTransportSecurity: false,
    }),
  );
  app.use('*', async (context, next) => {
    await next();
    context.header('Content-Security-Policy', `${contentSecurityPolicy}; frame-ancestors 'none'`);
    // Names of assets carry a fingerprint of what is in them; everything else is asked for anew.
    const lasting = context.req.path.startsWith('/assets/') && context.res.status === 200;
    context.header('Cache-Control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
  });
  app.use('*', serveStatic({ root: folder, precompressed: false }));
  app.notFound((context) => context.text('Not here.', 404));
  return app;
}
