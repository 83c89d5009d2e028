import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/**
 * The script behind a command of an installed package. Started through this Node rather than
 * through node_modules/.bin, which is a shell script on some platforms.
 * @param {string} command
 */
function scriptOf(command) {
  const owner = { tsc: 'typescript' }[command] ?? command;
  const folder = join(root, 'node_modules', owner);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[command]);
}

/**
 * Runs a script of ours (a path with a slash) or a command of an installed package.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ env?: Record<string, string | undefined>, collect?: (text: string) => void }} [options]
 *   `collect` takes what it prints, instead of the terminal
 * @returns {Promise<number>} its exit code
 */
export function run(command, args, { env = {}, collect } = {}) {
  const script = command.includes('/') ? join(root, command) : scriptOf(command);
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', collect ? 'pipe' : 'inherit', collect ? 'pipe' : 'inherit'],
    });
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (text) => collect?.(text));
    }
    child.once('error', reject);
    child.once('close', (code) => resolve(code ?? 1));
  });
}
