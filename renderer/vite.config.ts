import { gzipSync } from 'node:zlib';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const largestPageBytes = 250_000;

/** Says how large the page is without its fonts, and refuses to build one that a slow machine would wait for. */
const pageSize: Plugin = {
  name: 'page-size',
  generateBundle(_options, bundle) {
    const bytes = Object.values(bundle)
      .filter((it) => !it.fileName.endsWith('.woff2'))
      .reduce((sum, it) => sum + gzipSync(it.type === 'chunk' ? it.code : it.source).length, 0);
    console.log(`page without fonts: ${(bytes / 1000).toFixed(1)} kB gzip of ${largestPageBytes / 1000} kB`);
    if (bytes > largestPageBytes) this.error(`The page is larger than ${largestPageBytes / 1000} kB.`);
  },
};

export default defineConfig({
  root: import.meta.dirname,
  // The page is also opened from Electron's own scheme: every address in it is relative.
  base: './',
  plugins: [react(), pageSize],
  build: { outDir: 'dist', emptyOutDir: true, assetsInlineLimit: 0, target: 'es2024' },
});
