import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../functions/index.ts';

const folder = join(import.meta.dirname, '../../standards');
/** These go through the whole catalogue, and so name no function that they check against print. */
const throughAll = ['accuracy.test.ts', 'expansions.test.ts'];

/** What the standards tests say, without the lines that only bring functions in. */
const checks = readdirSync(folder)
  .filter((file) => file.endsWith('.test.ts') && !throughAll.includes(file))
  .map((file) => readFileSync(join(folder, file), 'utf8').replaceAll(/^import[\s\S]*?;$/gm, ''))
  .join('\n');

const isChecked = (name: string) => new RegExp(`\\b${name}\\b`).test(checks);

describe('a function that cites a source is held to something outside, in an example or a standards test', () => {
  for (const { name, sources, examples } of catalogue) {
    const cited = sources.filter(({ from }) => from !== 'common practice');
    const printed = examples.some(({ source }) => source && source !== 'common practice');
    const what = cited.length === 0 ? 'common practice' : cited.map(({ from }) => from).join(', ');
    it(`${name} (${what})`, () => {
      expect(cited.length === 0 || printed || isChecked(name)).toBe(true);
    });
  }
});

it('a name that stands in an import alone is no check', () => {
  expect(isChecked('NOSUCHFUNCTION')).toBe(false);
  expect(checks).not.toMatch(/^import /m);
});
