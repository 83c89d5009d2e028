import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { dist, root } from './root.mjs';

const folder = join(dist, 'cli');
const inputsFile = join(folder, 'inputs.json');

/** The command line, prebuilt into one file: it starts in a fraction of the time a compiler needs. */
export const bundleFile = join(folder, 'halfstop.js');

/** Whether the bundle is missing, or a file that went into it has changed since. */
export function cliIsStale() {
  try {
    const { begun, inputs } = JSON.parse(readFileSync(inputsFile, 'utf8'));
    statSync(bundleFile);
    return inputs.some((/** @type {string} */ path) => statSync(join(root, path)).mtimeMs > begun);
  } catch {
    return true;
  }
}

/** Bundles src/cli/main.ts with everything it needs but Node's own modules. */
export async function buildCli() {
  const begun = Date.now();
  const { build } = await import('vite');
  const result = await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: 'src/cli/main.ts',
      target: 'node20',
      minify: true,
      write: false,
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const { output } = /** @type {import('vite').Rolldown.RolldownOutput} */ (result);
  const ours = Object.keys(output[0].modules)
    .filter((id) => id.startsWith(root) && !id.includes('node_modules'))
    .map((id) => relative(root, id));
  mkdirSync(folder, { recursive: true });
  replace(bundleFile, output[0].code);
  const inputs = [...ours.sort(), 'package-lock.json'];
  replace(inputsFile, JSON.stringify({ begun, inputs }, null, 1) + '\n');
}

/** Writes beside and renames, so that a command started meanwhile reads the old file or the new one whole. @param {string} file @param {string} text */
function replace(file, text) {
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, text);
  renameSync(beside, file);
}

if (process.argv[1] === import.meta.filename) await buildCli();
