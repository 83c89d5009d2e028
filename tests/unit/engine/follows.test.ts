import fc from 'fast-check';
import { expect, it } from 'vitest';
import { connectEngine } from '../../../src/engine/index.ts';
import type { Engine } from '../../../src/engine/types.ts';
import { runs } from '../../support/runs.ts';
import { edit } from './support/edits.ts';
import { openBook } from './support/openBook.ts';

type Opened = ReturnType<typeof openBook>;

/** What every cell of the book shows and measures. */
function shown({ document }: Opened, engine: Engine) {
  return document.sheets.flatMap(({ id, properties, rows, columns }) =>
    rows.ids.flatMap((_, row) =>
      columns.ids.map((__, column) => {
        const place = { sheet: id, row, column };
        return [properties.name, row, column, engine.valueOf(place), engine.quantityOf(place)];
      }),
    ),
  );
}

const readings = [
  ['Point', 'lx', 'stops', 'sum'],
  ['Bench', '400 lx', '=STOPS(B2,B$2)', '=SUM(B2:B4)'],
  ['Rope', '200 lx', '=STOPS(B3,B$2)', '=SUM(B:B)'],
  ['Window', '', '=STOPS(B4,B$2)', '=VERDICT(B4,B2)'],
  ['', '3', '=C4+1', '=Door!A1'],
];
const door = [['2', '=A1*2', '=Walk!B2'], ['=SUM(Walk!B2:B5)']];

const dice = fc.array(fc.nat(999), { minLength: 14, maxLength: 14 });

/** More readers of one cell than the graph walks through: from 32 on it keeps an index of them. */
const manyReaders = [
  ...readings,
  ...Array.from({ length: 45 }, (_, row) => ['', String(row), '', `=B$2*${String(row)}`]),
];

function staysRight(walk: readonly (readonly string[])[], most: number, numRuns: number): void {
  fc.assert(
    fc.property(fc.array(dice, { maxLength: most }), (edits) => {
      const opened = openBook({ Walk: walk, Door: door });
      for (const each of edits) {
        edit(opened, each);
        const anew = connectEngine(opened.book);
        expect(shown(opened, opened.engine)).toEqual(shown(opened, anew));
        anew.dispose();
      }
      opened.engine.dispose();
    }),
    { numRuns },
  );
}

it('after any edits each cell is what a book read anew would show', () => {
  staysRight(readings, 40, runs(40));
});

it('the same where one cell has many readers', () => {
  staysRight(manyReaders, 25, runs(20));
});
