import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './root.mjs';

/**
 * Files that are written by a script from others: each script in src/tools/generate exports
 * `generate()`, which returns the path and the text of every file it answers for.
 * @typedef {{ path: string, text: string }} Generated
 */

const folder = join(root, 'src/tools/generate');

/** @returns {Promise<Generated[]>} formatted as the rest of the sources */
async function generated() {
  const { tsImport } = await import('tsx/esm/api');
  const { format, getFileInfo, resolveConfig } = await import('prettier');
  const ignorePath = join(root, '.prettierignore');
  const scripts = existsSync(folder) ? readdirSync(folder).sort() : [];
  const files = [];
  for (const script of scripts) {
    const module = await tsImport(pathToFileURL(join(folder, script)).href, import.meta.url);
    files.push(.../** @type {Generated[]} */ (await module.generate()));
  }
  return Promise.all(
    files.map(async ({ path, text }) => {
      const filepath = join(root, path);
      // A file whose bytes mean something is in the ignore file and stays as it was made.
      if ((await getFileInfo(filepath, { ignorePath })).ignored) return { path, text };
      return { path, text: await format(text, { ...(await resolveConfig(filepath)), filepath }) };
    }),
  );
}

/** @param {Generated} file */
function isCurrent({ path, text }) {
  const file = join(root, path);
  return existsSync(file) && readFileSync(file, 'utf8') === text;
}

/** What a fresh run would write otherwise. @returns {Promise<string[]>} */
export async function staleFiles() {
  const stale = (await generated()).filter((file) => !isCurrent(file));
  return stale.map(({ path }) => `${path} is not current: run npm run generate.`);
}

/** Writes what is not current. */
async function writeFiles() {
  for (const file of await generated()) {
    if (isCurrent(file)) continue;
    const target = join(root, file.path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, file.text);
    console.log(`Wrote ${file.path}.`);
  }
}

if (process.argv[1] === import.meta.filename) await writeFiles();
