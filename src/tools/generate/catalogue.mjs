import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../root.mjs';

const folder = join(root, 'functions');
const isFunction = /^([A-Z][A-Z0-9]*)\.ts$/;

/** Family and name of every file that states a function, in order. */
function functions() {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: family }) =>
      readdirSync(join(folder, family)).flatMap((file) => {
        const name = isFunction.exec(file)?.[1];
        return name === undefined ? [] : [{ family, name }];
      }),
    )
    .sort((one, other) => (one.family + '/' + one.name < other.family + '/' + other.name ? -1 : 1));
}

/** The list of all functions, from the files in their folders. */
export function generate() {
  const exports = functions().map(
    ({ family, name }) => `export { default as ${name} } from './${family}/${name}.ts';\n`,
  );
  const text = `// Written by src/tools/generate/catalogue.mjs from the files of this folder.
${exports.join('')}`;
  return [{ path: 'functions/all.ts', text }];
}
