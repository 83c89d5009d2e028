import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist, root } from './root.mjs';
import { run } from './run.mjs';
import { hashSources } from './sources.mjs';

/** Names the sources that dist was built from; a build by other means empties dist and so removes it. */
const stamp = join(dist, '.sources');

/** Builds the app, and the command line when there is one. @returns {Promise<boolean>} */
export async function build() {
  const hash = hashSources();
  if ((await run('vite', ['build', '--logLevel', 'warn'])) !== 0) return false;
  writeFileSync(stamp, hash + '\n');
  if (!existsSync(join(root, 'src/cli/main.ts'))) return true;
  return (await run('src/tools/build-cli.mjs', [])) === 0;
}

/** @returns {Promise<boolean>} whether there is a build of the sources as they are now */
export async function buildIfStale() {
  if (existsSync(stamp) && readFileSync(stamp, 'utf8').trim() === hashSources()) return true;
  console.error('Building the app.');
  return build();
}

if (process.argv[1] === import.meta.filename) process.exitCode = (await build()) ? 0 : 1;
