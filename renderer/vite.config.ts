import { gzipSync } from 'node:zlib';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

// The page is built as it ships, also where a test builds it: a test's setting would bring React's slow form.
process.env.NODE_ENV = 'production';

const largestPageBytes = 250_000;

/**
 * Says how large the page is without its fonts, and refuses to build one that a slow machine would wait for. What
 * the page asks for only after its first paint is told apart.
 */
const pageSize: Plugin = {
  name: 'page-size',
  generateBundle(_options, bundle) {
    let [atFirst, later] = [0, 0];
    for (const it of Object.values(bundle)) {
      if (it.fileName.endsWith('.woff2')) continue;
      const bytes = gzipSync(it.type === 'chunk' ? it.code : it.source).length;
      if (it.type === 'chunk' && it.isDynamicEntry) later += bytes;
      else atFirst += bytes;
    }
    const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
    console.log(
      `page without fonts, gzip: ${kB(atFirst)} of ${kB(largestPageBytes)}, and ${kB(later)} after the first paint`,
    );
    if (atFirst > largestPageBytes) this.error(`The page is larger than ${kB(largestPageBytes)}.`);
  },
};

export default defineConfig({
  root: import.meta.dirname,
  // The page is also opened from Electron's own scheme: every address in it is relative.
  base: './',
  plugins: [react(), pageSize],
  build: { outDir: 'dist', emptyOutDir: true, assetsInlineLimit: 0, target: 'es2024' },
});
