import { join } from 'node:path';
import { build } from 'vite';
import { distTests, root } from '../../src/tools/root.mjs';
import { testPages } from './pages.ts';

/** Bundles the bare test pages as the app is bundled. */
export async function buildPages(): Promise<void> {
  await build({
    root,
    logLevel: 'warn',
    publicDir: false,
    // A language of their own, for the app as for its workers.
    resolve: {
      alias: [{ find: /^\.\/others\.ts$/, replacement: join(root, 'tests/support/others.ts') }],
    },
    build: {
      outDir: distTests,
      emptyOutDir: true,
      rolldownOptions: { input: testPages() },
    },
  });
}
