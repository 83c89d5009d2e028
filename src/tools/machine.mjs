import { execFileSync } from 'node:child_process';
import { cpus, totalmem } from 'node:os';
import { root } from './root.mjs';

const git = (/** @type {string[]} */ ...args) =>
  execFileSync('git', args, { cwd: root, encoding: 'utf8' }).trim();

/**
 * The commit that figures belong to, and whether more than that was measured: of all files, or of
 * those under the paths that count. @param {readonly string[]} paths
 */
export function commit(...paths) {
  const changed = git('status', '--porcelain', '--untracked-files=no', '--', ...paths) !== '';
  return `${git('rev-parse', '--short', 'HEAD')}${changed ? ' with changes not yet committed' : ''}`;
}

/** What figures were measured on. */
export function machine() {
  const cores = cpus();
  const memory = Math.round(totalmem() / 2 ** 30);
  return `${cores[0]?.model.trim() ?? 'unknown processor'}, ${cores.length} cores, ${memory} GiB, Node ${process.versions.node}`;
}

/** A Markdown table. @param {readonly string[]} heads @param {readonly (readonly string[])[]} rows */
export function table(heads, rows) {
  const line = (/** @type {readonly string[]} */ cells) => `| ${cells.join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}
