import type { TestProject } from 'vitest/node';
import { buildIfStale } from '../../src/tools/build.mjs';
import { dist, distTests } from '../../src/tools/root.mjs';
import { serve } from '../../src/tools/serve.mjs';
import { buildPages } from './build-pages.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served. */
    app: string;
    /** Where the pages of tests/browser/pages are served, built as the app is. */
    pages: string;
  }
}

/** Serves the production build, and the bare test pages, to all browser tests of a run. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!(await buildIfStale())) throw new Error('The app could not be built.');
  const app = await serve({ folder: dist });
  // The test pages are bundled when a test first asks for one, and not in a run without such tests.
  const pages = await serve({ folder: distTests, before: once(buildPages) });
  project.provide('app', app.url);
  project.provide('pages', pages.url);
  return async () => {
    await app.close();
    await pages.close();
  };
}

function once(work: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | undefined;
  return () => (running ??= work());
}
