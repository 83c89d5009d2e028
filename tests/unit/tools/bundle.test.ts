import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { expect, test } from 'vitest';
import { root } from '../../../src/tools/root.mjs';
import { onlyNamedPackages } from '../../../src/tools/vite-plugins.mjs';

/** Bundles one script that uses a file of an installed package. */
async function bundleWith(file: string): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'halfstop-bundle-'));
  try {
    const path = JSON.stringify(join(root, 'node_modules', file));
    await writeFile(join(folder, 'main.js'), `import * as all from ${path};\nconsole.log(all);\n`);
    await build({
      root: folder,
      configFile: false,
      logLevel: 'silent',
      plugins: [onlyNamedPackages()],
      build: { write: false, rolldownOptions: { input: join(folder, 'main.js') } },
    });
  } finally {
    await rm(folder, { recursive: true });
  }
}

test('a package that the notices name may be bundled', async () => {
  await expect(bundleWith('idb/build/index.js')).resolves.toBeUndefined();
});

test('a package that is only there for tests stops the build', async () => {
  await expect(bundleWith('fast-check/lib/fast-check.js')).rejects.toThrow(
    /fast-check is in the bundle but not among the notices/,
  );
});

test('a package that must stay out stops the build', async () => {
  await expect(bundleWith('moment/moment.js')).rejects.toThrow(/moment is in the bundle/);
});
