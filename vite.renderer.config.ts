import { resolve } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig, type UserConfig } from 'vite';

/**
 * The studio window as a plain web page in `out/renderer`. The Electron window and the browser host load the same files,
 * from a folder whose address is not known here, so every path in them is relative.
 */
export const renderer = {
  root: resolve(import.meta.dirname, 'src/renderer'),
  base: './',
  plugins: [react()],
  build: {
    outDir: resolve(import.meta.dirname, 'out/renderer'),
    emptyOutDir: true,
    minify: true,
    // Both hosts are this new: Electron's own Chromium, and browsers that know `import` attributes and nested CSS.
    target: 'es2022',
    // Nothing is written into the page itself, so that it can forbid inline scripts and data addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // One style sheet beside the one script: each file asked for costs more than what it holds.
    cssCodeSplit: false,
    chunkSizeWarningLimit: 2000,
  },
  worker: { format: 'es' },
} satisfies UserConfig;

export default defineConfig(renderer);
