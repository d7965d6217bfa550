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
    const chunks = Object.values(bundle).filter((it) => it.type === 'chunk');
    const atFirst = new Set<string>(
      chunks.filter((it) => it.isEntry || it.name === 'window').map((it) => it.fileName),
    );
    // A set may grow while it is walked: whatever is imported is walked too.
    for (const name of atFirst)
      for (const imported of chunks.find((it) => it.fileName === name)?.imports ?? []) atFirst.add(imported);
    const size = { first: 0, later: 0 };
    for (const it of Object.values(bundle)) {
      if (it.fileName.endsWith('.woff2')) continue;
      // What runs in a thread of its own is asked for by a screen that needs it.
      const isLater = it.type === 'chunk' ? !atFirst.has(it.fileName) : it.fileName.endsWith('.js');
      size[isLater ? 'later' : 'first'] += gzipSync(it.type === 'chunk' ? it.code : it.source).length;
    }
    const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
    console.log(
      `page without fonts, gzip: ${kB(size.first)} of ${kB(largestPageBytes)}, and ${kB(size.later)} later`,
    );
    if (size.first > largestPageBytes) this.error(`The page is larger than ${kB(largestPageBytes)}.`);
  },
};

export default defineConfig({
  root: import.meta.dirname,
  // The page is also opened from Electron's own scheme: every address in it is relative.
  base: './',
  plugins: [react(), pageSize],
  worker: { format: 'es' },
  build: { outDir: 'dist', emptyOutDir: true, assetsInlineLimit: 0, target: 'es2024' },
});
