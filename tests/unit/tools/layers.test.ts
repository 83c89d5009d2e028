import { mkdir, mkdtemp, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { checkLayers } from '../../../src/tools/check-layers.mjs';

const folders: string[] = [];

afterEach(async () => {
  for (const folder of folders.splice(0)) await rm(folder, { recursive: true });
});

/** What the check says of a house made of these files. */
async function check(
  files: Record<string, string>,
): Promise<{ modules: number; faults: string[] }> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'halfstop-layers-')));
  folders.push(folder);
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
  return checkLayers(folder);
}

const value = 'export const value = 1;\n';
const uses = (path: string): string =>
  `import { value } from '${path}';\nexport const two = value;\n`;
const library = (name: string): Record<string, string> => ({
  [`node_modules/${name}/package.json`]: `{"name":"${name}","version":"1.0.0","main":"index.js"}`,
  [`node_modules/${name}/index.js`]: 'exports.value = 1;\n',
});

test('imports downstairs pass', async () => {
  const { modules, faults } = await check({
    'functions/stops.ts': value,
    'src/engine/index.ts': uses('../../functions/stops.ts'),
    'src/panels/slip.ts': uses('../engine/index.ts').replace('two', 'value'),
  });
  expect(faults).toEqual([]);
  expect(modules).toBe(3);
});

test.each([
  ['functions/stops.ts', 'src/engine/index.ts', 'functions stand alone'],
  ['src/book/step.ts', 'src/engine/index.ts', 'src/book imports only what it may'],
  ['src/engine/index.ts', 'src/panels/slip.ts', 'src/engine imports only what it may'],
  ['src/panels/slip.ts', 'src/grid/index.ts', 'src/panels imports only what it may'],
  ['src/walk/index.ts', 'src/plan/index.ts', 'src/walk imports only what it may'],
  ['src/grid/index.ts', 'src/app/main.ts', 'src/grid imports only what it may'],
  ['src/cli/main.ts', 'src/panels/slip.ts', 'src/cli imports only what it may'],
  ['src/book/step.ts', 'src/tools/some.ts', 'the product does not use its tests or tools'],
])('%s may not import %s', async (from, to, rule) => {
  const path = `${'../'.repeat(from.split('/').length - 1)}${to}`;
  const { faults } = await check({ [from]: uses(path), [to]: value });
  expect(faults).toContain(`${from} → ${to} (${rule})`);
});

test('a type alone is an import too', async () => {
  const { faults } = await check({
    'src/book/step.ts':
      "import type { Value } from '../engine/index.ts';\nexport type Two = Value;\n",
    'src/engine/index.ts': 'export type Value = number;\n',
  });
  expect(faults).toEqual([
    'src/book/step.ts → src/engine/index.ts (src/book imports only what it may)',
  ]);
});

test('the command line may not reach a screen through a room', async () => {
  const { faults } = await check({
    'src/cli/main.ts': uses('../walk/logic.ts'),
    'src/walk/logic.ts': "export { value } from '../panels/slip.ts';\n",
    'src/panels/slip.ts': value,
  });
  expect(faults).toContain(
    'src/cli/main.ts → src/panels/slip.ts (the command line reaches nothing of the screen)',
  );
});

test('two files that import each other are a circle', async () => {
  const { faults } = await check({
    'src/book/a.ts': "import { b } from './b.ts';\nexport const a = (): number => b();\n",
    'src/book/b.ts': "import { a } from './a.ts';\nexport const b = (): number => a();\n",
  });
  expect(faults).toContain('src/book/a.ts → src/book/b.ts → src/book/a.ts (no circles)');
});

test('a library is used by its owner and by nobody else', async () => {
  const files = { 'src/formula/tree.ts': uses('@borgar/fx'), ...library('@borgar/fx') };
  expect((await check(files)).faults).toEqual([]);
  const { faults } = await check({ ...files, 'src/engine/index.ts': uses('@borgar/fx') });
  expect(faults).toEqual([
    'src/engine/index.ts → node_modules/@borgar/fx/index.js (@borgar/fx belongs to src/formula)',
  ]);
});

test('a library that nobody owns is refused', async () => {
  const { faults } = await check({
    'src/app/main.ts': uses('left-behind'),
    ...library('left-behind'),
  });
  expect(faults).toEqual([
    'src/app/main.ts → node_modules/left-behind/index.js (every outside library has an owner)',
  ]);
});

test('an import of a file that is not there is a fault', async () => {
  const { faults } = await check({ 'src/book/step.ts': uses('./gone.ts') });
  expect(faults).toEqual(['src/book/step.ts → ./gone.ts (every import is found)']);
});

test('Node is not to be had in the product', async () => {
  const { faults } = await check({
    'src/files/read.ts': "export { readFileSync } from 'node:fs';\n",
  });
  expect(faults).toEqual(['src/files/read.ts → fs (Node is for the tools)']);
});

test('the check sees this project', async () => {
  const { modules } = await checkLayers();
  expect(modules).toBeGreaterThan(10);
});
