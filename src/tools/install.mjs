// Runs before anything is installed, so only Node's own modules here.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

const lockFile = join(root, 'package-lock.json');
const installedHash = join(root, 'node_modules/.halfstop-lock');
/** npm writes this last, so a broken-off install does not have it. */
const installedTree = join(root, 'node_modules/.package-lock.json');

/** Installs what the lock file says, unless exactly that is installed already. */
export function ensureInstalled() {
  const hash = createHash('sha256').update(readFileSync(lockFile)).digest('hex');
  if (existsSync(installedHash) && readFileSync(installedHash, 'utf8').trim() === hash) return;
  if (!existsSync(installedTree) || !sameTree(readLock(lockFile), readLock(installedTree))) {
    console.error('Installing the dependencies (npm ci).');
    const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
    const { status } = spawnSync(npm, ['ci', '--include=dev', '--no-audit', '--no-fund'], {
      cwd: root,
      stdio: ['ignore', process.stderr.fd, process.stderr.fd],
      shell: process.platform === 'win32',
    });
    if (status !== 0) {
      console.error('The dependencies could not be installed: see the message of npm above.');
      process.exit(1);
    }
  }
  writeFileSync(installedHash, hash + '\n');
}

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean }} Entry
 * @typedef {Record<string, Entry>} Tree
 */

/** @param {string} file @returns {Tree} */
function readLock(file) {
  const { '': _self, ...packages } = JSON.parse(readFileSync(file, 'utf8')).packages;
  return packages;
}

/** Optional packages are for other platforms and may be absent. @param {Tree} wanted @param {Tree} found */
export function sameTree(wanted, found) {
  const present = Object.entries(wanted).every(([path, entry]) =>
    found[path] ? found[path].version === entry.version : entry.optional || entry.devOptional,
  );
  return present && Object.keys(found).every((path) => path in wanted);
}
