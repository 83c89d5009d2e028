import { build } from 'vite';
import { distTests, root } from '../../src/tools/root.mjs';
import { testPages } from './pages.ts';

/** Bundles the bare test pages as the app is bundled. */
export async function buildPages(): Promise<void> {
  await build({
    root,
    logLevel: 'warn',
    publicDir: false,
    build: {
      outDir: distTests,
      emptyOutDir: true,
      rolldownOptions: { input: testPages() },
    },
  });
}
