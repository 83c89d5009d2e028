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

/** The catalogue of all functions, from the files in their folders. */
export function generate() {
  const all = functions();
  const names = all.map(({ name }) => `  ${name},\n`).join('');
  const imports = all.map(({ family, name }) => `import ${name} from './${family}/${name}.ts';\n`);
  const text = `// Written by src/tools/generate/catalogue.mjs from the files of this folder.
import type { AnyDefinition } from './define.ts';
${imports.join('')}
export {
${names}};

/** Every function of the library, by family and name. */
export const catalogue: readonly AnyDefinition[] = [
${names}];

/** The same by name, in capitals. */
export const byName: ReadonlyMap<string, AnyDefinition> = new Map(
  catalogue.map((definition) => [definition.name, definition]),
);
`;
  return [{ path: 'functions/index.ts', text }];
}
