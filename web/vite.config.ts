import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { contentSecurityPolicy } from '../server/src/policy.ts';

export default defineConfig({
  // Relative addresses: the folder works at any path of any web host.
  base: './',
  resolve: { conditions: ['source', 'module', 'browser', 'import', 'default'] },
  build: {
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What the page opens with is one file: twenty small ones are fetched and compressed worse.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  worker: { format: 'es' },
  // Found by the worker only, and late: the first papers would load the page anew.
  optimizeDeps: { include: ['@ribbonwright/engine > pdfkit', '@ribbonwright/engine > fontkit'] },
  plugins: [
    svelte(),
    {
      name: 'content-security-policy',
      // Not while developing: the development server sends its own scripts inline.
      apply: 'build',
      transformIndexHtml: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
          injectTo: 'head-prepend',
        },
      ],
    },
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      workbox: {
        globPatterns: ['**/*.{html,js,css,ttf,svg,png,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        cleanupOutdatedCaches: true,
        // The first visit is looked after too.
        clientsClaim: true,
        inlineWorkboxRuntime: false,
      },
      manifest: {
        name: 'Ribbonwright',
        short_name: 'Ribbonwright',
        description: 'A table to plan a ribbon skirt on.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f3ecdf',
        theme_color: '#f3ecdf',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        ],
      },
    }),
  ],
});
