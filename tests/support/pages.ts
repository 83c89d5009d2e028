import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../src/tools/root.mjs';

const folder = 'tests/browser/pages';

/** Bare pages on which a part of the app is tested by itself, e.g. the grid without the shell. */
export function testPages(): Record<string, string> {
  const names = readdirSync(join(root, folder)).filter((name) => name.endsWith('.html'));
  return Object.fromEntries(names.map((name) => [name.slice(0, -5), join(root, folder, name)]));
}

/** The path of such a page below the address of the test pages. */
export const pagePath = (name: string): string => `${folder}/${name}.html`;
