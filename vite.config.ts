import { defineConfig, type Plugin } from 'vite';
import { gridAliases } from './src/grid/vite-aliases.ts';
import { dist } from './src/tools/root.mjs';
import { early, notices, offline, onlyNamedPackages, policy } from './src/tools/vite-plugins.mjs';

/** A build is for production whoever asks for it: a test runner’s own mode must not leak into it. */
const forProduction: Plugin = {
  name: 'for-production',
  config(_, { command }) {
    if (command === 'build') process.env['NODE_ENV'] = 'production';
  },
};

export default defineConfig({
  base: './',
  resolve: { alias: gridAliases },
  plugins: [forProduction, policy(), early(), onlyNamedPackages(), notices(), offline()],
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
