import { globSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { defineConfig } from 'electron-vite';
import { renderer } from './vite.renderer.config.ts';

const source = (file: string) => resolve(import.meta.dirname, file);

/**
 * Programs of src/main that become files of their own in `out/main`, all side by side: the Electron entry, the terminal
 * program, and every `<name>.worker.ts`, so that a worker is found beside whoever starts it:
 * `new URL(import.meta.url.endsWith('.ts') ? './<name>.worker.ts' : './<name>.worker.js', import.meta.url)`.
 */
const workers = globSync('src/main/**/*.worker.ts', { cwd: import.meta.dirname });
const programs = {
  index: source('src/main/index.ts'),
  cli: source('src/main/cli/index.ts'),
  ...Object.fromEntries(workers.map((file) => [basename(file, '.ts'), source(file)])),
};

export default defineConfig({
  main: {
    build: {
      outDir: source('out/main'),
      // Packages stay packages: pdfmake and better-sqlite3 find files of their own beside themselves.
      externalizeDeps: true,
      rollupOptions: {
        input: programs,
        output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
      },
    },
  },
  preload: {
    build: {
      outDir: source('out/preload'),
      // A sandboxed preload can load nothing but electron, and only as CommonJS.
      externalizeDeps: false,
      rollupOptions: {
        input: source('src/main/preload.ts'),
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer,
});
