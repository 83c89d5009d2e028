import { expect, test, vi } from 'vitest';
import { english } from '../../../src/words/english.ts';
import { bracketed } from '../../support/bracketed.ts';

vi.mock('../../../src/words/others.ts', () => ({
  others: { de: () => Promise.resolve(bracketed(english)) },
}));

/** What the command line says in a language in which every sentence stands in brackets. */
async function said(languages: readonly string[], argv: readonly string[]): Promise<string> {
  vi.resetModules();
  const { main } = await import('../../../src/cli/main.ts');
  let text = '';
  const say = (more: string) => void (text += more);
  await main(argv, {
    ...{ languages, out: say, err: say, readInput: () => Promise.resolve('') },
    readFile: () => Promise.reject(new Error('ENOENT')),
    writeFile: () => Promise.resolve(),
    filesIn: () => Promise.resolve(undefined),
  });
  return text;
}

/** Words outside brackets that are no names of ours. */
const outside = (text: string): readonly string[] => {
  let depth = 0;
  const rest = Array.from(text, (sign) => {
    if (sign === '[') depth += 1;
    const kept = depth === 0 ? sign : ' ';
    if (sign === ']') depth -= 1;
    return kept;
  }).join('');
  const names = ['halfstop', 'evaluate', 'values', 'check', 'convert', 'handouts', 'mark'];
  return (rest.match(/\p{L}{2,}/gu) ?? []).filter((word) => !names.includes(word));
};

test.each([
  [['--help']],
  [['nonsense']],
  [['evaluate']],
  [['evaluate', '--book', 'gone.json', '1']],
  [['evaluate', '--decimal', '!', '1']],
  [['evaluate', '--fixture', 'Key', '1']],
  [['values', '--sheet']],
  [['check', 'gone.json']],
  [['check', 'one.json', 'two.json']],
  [['convert', 'one.json']],
  [['convert', 'one.json', 'two.doc']],
  [['convert', '--wrong', 'one.json', 'two.csv']],
  [['handouts', 'class.csv']],
  [['mark', 'KEY.json']],
])('halfstop %j says all it says in the language of its person', async (argv) => {
  const text = await said(['de_AT.UTF-8'], argv);
  expect(text).toContain('[');
  expect(outside(text)).toEqual([]);
});

test('English is said where nobody asks for another', async () => {
  expect(await said(['C'], ['nonsense'])).toMatch(/^There is no command nonsense\./);
});
