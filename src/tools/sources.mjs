import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/** What the built app is made from. */
const appSources = [
  'functions',
  'src',
  'templates',
  'public',
  'index.html',
  'vite.config.ts',
  'package-lock.json',
];

/** Every file under these paths, sorted. @param {readonly string[]} paths @returns {string[]} */
function filesUnder(paths) {
  return paths.flatMap((path) => {
    const info = statSync(join(root, path), { throwIfNoEntry: false });
    if (!info) return [];
    if (info.isFile()) return [path];
    const names = readdirSync(join(root, path)).sort();
    return filesUnder(names.map((name) => `${path}/${name}`));
  });
}

/** One hash over names and contents: times of change say nothing after a clone or a checkout. */
export function hashSources(/** @type {readonly string[]} */ paths = appSources) {
  const hash = createHash('sha256');
  for (const file of filesUnder(paths)) {
    const bytes = readFileSync(join(root, file));
    hash.update(`${file}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}
