import { resolve } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'electron-vite';
import type { UserConfig } from 'electron-vite';

const root = import.meta.dirname;

// Three bundles from one tree. `minify` is stated in each part because electron-vite turns it off by default.
const parts: UserConfig = {
  main: {
    build: {
      outDir: 'out/main',
      sourcemap: true,
      minify: false,
      externalizeDeps: true,
      target: 'node20',
      rollupOptions: {
        input: {
          index: resolve(root, 'src-main/desktop/index.ts'),
          local: resolve(root, 'src-main/local/index.ts'),
          command: resolve(root, 'src-main/command/index.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      outDir: 'out/preload',
      externalizeDeps: false,
      isolatedEntries: true,
      rollupOptions: {
        input: { preload: resolve(root, 'src-main/desktop/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'src-renderer',
    publicDir: resolve(root, 'assets/app'),
    plugins: [react()],
    build: {
      outDir: resolve(root, 'out/renderer'),
      emptyOutDir: true,
      minify: true,
      sourcemap: true,
      assetsInlineLimit: 0,
      rollupOptions: { input: { index: resolve(root, 'src-renderer/index.html') } },
    },
  },
};

// The command line needs the hosts only and must not wait for the screens.
export default defineConfig(process.env['BRIMFUL_BUILD'] === 'main' ? { main: parts.main } : parts);
