import { defineConfig } from 'vite';
import { gridAliases } from './src/grid/vite-aliases.ts';
import { dist } from './src/tools/root.mjs';
import { notices, onlyNamedPackages, policy } from './src/tools/vite-plugins.mjs';

export default defineConfig({
  base: './',
  resolve: { alias: gridAliases },
  plugins: [policy(), onlyNamedPackages(), notices()],
  worker: { format: 'es', plugins: () => [onlyNamedPackages()] },
  build: {
    outDir: dist,
    emptyOutDir: true,
    target: 'es2022',
    // The polyfill is an inline-style shim for browsers older than the target.
    modulePreload: { polyfill: false },
    // Inlined assets would be data: addresses, which the policy refuses for fonts.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1000,
    reportCompressedSize: false,
  },
});
