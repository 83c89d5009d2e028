import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/**
 * @typedef {object} Dependency
 * @property {string} name
 * @property {string} version
 * @property {string} licence an SPDX expression
 * @property {string} folder
 * @property {boolean} shipped needed by the built app, and not only to build or test it
 */

/** Packages that handsontable asks for and the bundle leaves out; tests/browser/policy.test.ts proves it. */
export const leftOut = ['moment', 'numbro', 'pikaday'];

/** @returns {{ packages: Record<string, Record<string, any>> }} */
export const readLock = () => JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));

/** Every package of the lock file, also those for other platforms. @returns {Dependency[]} */
export function dependencies({ packages } = readLock()) {
  const shipped = shippedPaths(packages);
  return Object.entries(packages)
    .filter(([path]) => path !== '')
    .map(([path, entry]) => ({
      name: entry.name ?? nameOf(path),
      version: entry.version,
      licence: entry.license ?? '',
      folder: join(root, path),
      shipped: shipped.has(path),
    }));
}

/** @param {string} path */
const nameOf = (path) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

/** @param {Record<string, Record<string, any>>} packages @returns {Set<string>} */
function shippedPaths(packages) {
  const found = new Set();
  const visit = (/** @type {string} */ path) => {
    for (const name of Object.keys(packages[path]?.['dependencies'] ?? {})) {
      const next = resolvePath(packages, path, name);
      if (next === undefined || found.has(next) || leftOut.includes(name)) continue;
      found.add(next);
      visit(next);
    }
  };
  visit('');
  return found;
}

/**
 * Where Node would find a package from inside another: nearest node_modules first.
 * @param {Record<string, unknown>} packages
 * @param {string} from
 * @param {string} name
 * @returns {string | undefined}
 */
function resolvePath(packages, from, name) {
  const path = `${from}${from ? '/' : ''}node_modules/${name}`;
  if (path in packages) return path;
  if (from === '') return undefined;
  const outer = from.slice(0, Math.max(0, from.lastIndexOf('/node_modules/')));
  return resolvePath(packages, from.includes('/node_modules/') ? outer : '', name);
}
