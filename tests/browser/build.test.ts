import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { dist, root } from '../../src/tools/root.mjs';
import { build } from 'vite';

/** Each file of the built app with its content, without the command line and our own marks. */
function contents(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => !name.startsWith('cli') && !name.startsWith('.'))
    .filter((name) => statSync(join(folder, name)).isFile())
    .sort();
  return Object.fromEntries(
    names.map((name) => [name, readFileSync(join(folder, name), 'base64')]),
  );
}

test('the same sources give the same bytes', async () => {
  const again = mkdtempSync(join(tmpdir(), 'halfstop-again-'));
  try {
    await build({ root, logLevel: 'error', build: { outDir: again, emptyOutDir: true } });
    const first = contents(dist);
    expect(Object.keys(first)).toEqual(
      expect.arrayContaining(['index.html', 'LICENSE.txt', 'THIRD-PARTY.txt']),
    );
    expect(contents(again)).toEqual(first);
  } finally {
    rmSync(again, { recursive: true });
  }
});
