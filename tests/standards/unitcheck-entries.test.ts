import { expect, it } from 'vitest';
import { openBook } from '../unit/engine/support/openBook.ts';
import { accepted } from './entries/index.ts';

// Every entry of the table is sent through the engine as a text: HyperFormula by itself would read
// 4:1 as a time, 1 1/3 as a date and 12% as a number.
const typed = [...new Set(accepted.map((entry) => entry.typed))].filter((text) => text !== '');

const { value } = openBook({
  Walk: typed.map((text, row) => [
    `'${text}`,
    `=ISTEXT(A${String(row + 1)})`,
    `=A${String(row + 1)}&""`,
  ]),
});

it('there are at least 300 entries to send', () => {
  expect(typed.length).toBeGreaterThanOrEqual(300);
});

it.each(typed.map((text, row) => [text, row + 1] as const))(
  'the engine takes the text %s for no date, time or number',
  (text, row) => {
    const at = (column: string) => value(`${column}${String(row)}`);
    expect([at('A'), at('B'), at('C')]).toEqual([text, true, text]);
  },
);
