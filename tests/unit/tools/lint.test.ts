import { join } from 'node:path';
import { ESLint } from 'eslint';
import { expect, test } from 'vitest';
import { root } from '../../../src/tools/root.mjs';

const eslint = new ESLint({ cwd: root });

/** The rules a text breaks if it stood in a file that is there. */
async function broken(text: string, filePath = 'functions/define.ts'): Promise<string[]> {
  const [result] = await eslint.lintText(text, { filePath: join(root, filePath) });
  return (result?.messages ?? []).map(({ ruleId, message }) => ruleId ?? message);
}

const clock = 'export const now = (): number => Date.now();\n';

test.each([
  ['a clock', clock, 'no-restricted-syntax'],
  ['today', 'export const now = new Date();\n', 'no-restricted-syntax'],
  ['chance', 'export const roll = Math.random();\n', 'no-restricted-syntax'],
  ['the locale of the machine', 'export const a = (1).toLocaleString();\n', 'no-restricted-syntax'],
  [
    'the locale of the machine, written out',
    'export const a = (1).toLocaleString(undefined);\n',
    'no-restricted-syntax',
  ],
  ['its number format', 'export const a = new Intl.NumberFormat();\n', 'no-restricted-syntax'],
  [
    'its number format, written out',
    'export const a = new Intl.NumberFormat(undefined);\n',
    'no-restricted-syntax',
  ],
  ['its order', "export const a = 'a'.localeCompare('b');\n", 'no-restricted-syntax'],
  [
    'markup from text',
    "export const set = (a: { innerHTML: string }): void => void (a.innerHTML = '');\n",
    'no-restricted-syntax',
  ],
  [
    'a promise left alone',
    'export const a = async (): Promise<void> => {};\na();\n',
    '@typescript-eslint/no-floating-promises',
  ],
  ['any', 'export const a: any = 1;\n', '@typescript-eslint/no-explicit-any'],
  ['code from text', "export const a = (): unknown => eval('1');\n", 'no-eval'],
  [
    'a type imported as a value',
    "import { Domain } from './domains.ts';\nexport type A = Domain;\n",
    '@typescript-eslint/consistent-type-imports',
  ],
  ['a name nobody uses', 'const a = 1;\nexport {};\n', '@typescript-eslint/no-unused-vars'],
])('%s is refused', async (_what, text, rule) => {
  expect(await broken(text)).toContain(rule);
});

test.each([
  ['a day that is given', "export const day = new Date('2026-06-21T12:00:00Z');\n"],
  ['a locale that is named', "export const a = new Intl.NumberFormat('en-GB');\n"],
  ['a locale that is named to a number', "export const a = (1).toLocaleString('en-GB');\n"],
  ['an order that is named', "export const a = 'a'.localeCompare('b', 'en');\n"],
])('%s passes', async (_what, text) => {
  expect(await broken(text)).toEqual([]);
});

test('the app, which wires the house, may look at the clock', async () => {
  expect(await broken(clock, 'src/app/main.ts')).toEqual([]);
});

test('a file is long at 250 lines and too long at 400', async () => {
  const lines = (count: number): string =>
    Array.from({ length: count }, (_, line) => `export const a${line} = ${line};\n`).join('');
  expect(await broken(lines(250))).toEqual([]);
  expect(await broken(lines(251))).toEqual(['house/long-file']);
  expect(await broken(lines(401))).toEqual(expect.arrayContaining(['max-lines']));
});
