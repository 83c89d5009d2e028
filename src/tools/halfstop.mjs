import { mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { buildCli, bundleFile, cliIsStale } from './build-cli.mjs';
import { pathToFileURL } from 'node:url';

if (cliIsStale()) {
  const { ensureInstalled } = await import('./install.mjs');
  ensureInstalled();
  console.error('Building the command line.');
  await buildCli();
}

// A reader that has enough (head, less) closes the pipe; that is no error.
process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ reason) => {
  if (reason.code === 'EPIPE') process.exit();
  throw reason;
});

async function readStandardInput() {
  const parts = [];
  for await (const part of process.stdin.setEncoding('utf8')) parts.push(part);
  return parts.join('');
}

const { main } = await import(pathToFileURL(bundleFile).href);
// The order in which POSIX programs look for the language of their messages.
const { LC_ALL, LC_MESSAGES, LANG } = process.env;
process.exitCode = await main(process.argv.slice(2), {
  languages: [LC_ALL, LC_MESSAGES, LANG].filter((tag) => tag !== undefined && tag !== ''),
  out: (/** @type {string} */ text) => void process.stdout.write(text),
  err: (/** @type {string} */ text) => void process.stderr.write(text),
  readInput: readStandardInput,
  readFile: (/** @type {string} */ path) => readFile(path),
  writeFile: async (/** @type {string} */ path, /** @type {Uint8Array | string} */ content) => {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, content);
  },
  filesIn: async (/** @type {string} */ path) => {
    const there = await stat(path).catch(() => undefined);
    if (!there?.isDirectory()) return undefined;
    const entries = await readdir(path, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  },
});
