import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import whence from './src/dossier/integration.ts';

export default defineConfig({
  output: 'static',
  // Astro empties this folder before it renders: never one a person may have filled. `npm run build` makes the site from it.
  outDir: './node_modules/.whence/pages',
  base: '/',
  // One file per page: `/records/x.html` opens from a folder on disk as well as from a server.
  trailingSlash: 'never',
  build: { format: 'file', inlineStylesheets: 'never', concurrency: 16, assets: 'assets' },
  // The default mode drops white space between inline elements.
  compressHTML: true,
  prerenderConflictBehavior: 'error',
  cacheDir: './node_modules/.whence/astro',
  devToolbar: { enabled: false },
  // Coloured code would need inline styles, which no page has.
  markdown: { syntaxHighlight: false },
  integrations: [whence(), mdx()],
  vite: {
    cacheDir: './node_modules/.whence/vite',
    // A font or drawing written into the stylesheet as data would be refused by the content security policy.
    build: { assetsInlineLimit: 0 },
  },
});
