import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { root } from '../../../src/tools/root.mjs';
import { english } from '../../../src/words/english.ts';

type Said = string | ((...given: unknown[]) => string);

function leaves(branch: object, path: string): readonly (readonly [string, Said])[] {
  return Object.entries(branch).flatMap(([key, value]: [string, Said | object]) =>
    typeof value === 'object'
      ? leaves(value, `${path}${key}.`)
      : [[`${path}${key}`, value] as const],
  );
}

const all = leaves(english, '');

/** `madeUp.gap` of an entry in a table of its own. */
function keysOf(entry: ts.Node, file: ts.SourceFile): string {
  const keys: string[] = [];
  for (let node = entry; node !== file; node = node.parent)
    if (ts.isPropertyAssignment(node)) keys.unshift(node.name.getText(file));
  return keys.join('.');
}

/** Parameters by their names and types, as written: what a function is given must look like what it says. */
function samples(path: string, said: (...given: unknown[]) => string): readonly unknown[] {
  const [area = ''] = path.split('.');
  const file = ts.createSourceFile(
    area,
    readFileSync(join(root, `src/words/english/${area}.ts`), 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const kinds = new Map<string, string[]>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node) && ts.isArrowFunction(node.initializer))
      kinds.set(
        keysOf(node, file),
        node.initializer.parameters.map((one) => one.type?.getText(file) ?? ''),
      );
    ts.forEachChild(node, visit);
  };
  visit(file);
  const types = kinds.get(path.slice(area.length + 1)) ?? [];
  expect(types, path).toHaveLength(said.length);
  return types.map((type) => {
    if (type === 'number') return 3;
    if (type === 'boolean') return true;
    if (type === 'readonly string[]') return ['C12', 'C13'];
    if (type === 'Axis') return 'rows';
    if (type === 'Sign') return '+';
    return /^'(\w+)'/.exec(type)?.[1] ?? 'C12';
  });
}

const textOf = ([path, said]: readonly [string, Said]): string =>
  typeof said === 'string' ? said : said(...samples(path, said));

describe('the catalogue in English', () => {
  test.each(all)('%s is said in our style', (...leaf) => {
    const text = textOf(leaf);
    expect(text.trim()).not.toBe('');
    expect(text).not.toMatch(/undefined|null|NaN|\[object/);
    expect(text).not.toMatch(/ {2}|!(?!” and a cell)/);
    expect(text).not.toMatch(/\b(sorry|please|oops)\b/i);
    // Sentence case: no second word of a label begins with a capital unless it is a name.
    expect(text).not.toMatch(/^[A-Z][a-z]+ (The|A|An|Of|To|And|With|For|Is|Are) /);
  });
});

/** Every access to the catalogue in src, as `area.key`, by the syntax and not by the letters. */
function used(): ReadonlySet<string> {
  const found = new Set<string>();
  for (const file of readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts') || file.startsWith('words/')) continue;
    const text = readFileSync(join(root, 'src', file), 'utf8');
    if (!text.includes('words/words.ts')) continue;
    const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
    /** Parts of the catalogue that a file calls by a name of its own. */
    const named = new Map<string, string>();
    const visit = (node: ts.Node): void => {
      const path = ts.isPropertyAccessExpression(node) && pathOf(node, named);
      if (path) found.add(path);
      const from = ts.isVariableDeclaration(node) && node.initializer;
      const part = from ? pathOf(from, named) : undefined;
      if (ts.isVariableDeclaration(node) && part !== undefined) {
        if (ts.isIdentifier(node.name)) named.set(node.name.text, part);
        else
          for (const one of node.name.elements)
            if (ts.isBindingElement(one)) {
              const key = `${part && `${part}.`}${(one.propertyName ?? one.name).getText(source)}`;
              named.set(one.name.getText(source), key);
              found.add(key);
            }
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

/** `slip.title` of `words.slip.title`; undefined for what does not begin at the catalogue. */
function pathOf(node: ts.Node, named: ReadonlyMap<string, string>): string | undefined {
  const keys: string[] = [];
  let at = node;
  while (ts.isPropertyAccessExpression(at)) {
    keys.unshift(at.name.text);
    at = at.expression;
  }
  if (ts.isElementAccessExpression(at)) return pathOf(at.expression, named);
  if (!ts.isIdentifier(at)) return undefined;
  const part = at.text === 'words' ? '' : named.get(at.text);
  return part === undefined ? undefined : [part, ...keys].filter(Boolean).join('.');
}

test('every entry of the catalogue is said somewhere', () => {
  const paths = used();
  // A table is taken as a whole: who says `print.roles` may say each of them.
  const isUsed = (path: string) => {
    const keys = path.split('.');
    return keys.some((_, end) => end >= 1 && paths.has(keys.slice(0, end + 1).join('.')));
  };
  expect(all.map(([path]) => path).filter((path) => !isUsed(path))).toEqual([]);
});
