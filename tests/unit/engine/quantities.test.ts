import { describe, expect, it } from 'vitest';
import { setColumnQuantity, setQuantity } from '../../../src/book/make/properties.ts';
import { openBook } from './support/openBook.ts';

const readings = [
  ['400 lx', '100 lx', '50 %', '2 m', '3 m', '7', '9 cd', 'f/4', '2.4 kW', '230 V'],
];

/** What a formula measures on a sheet of readings in row 1. */
const measured: readonly (readonly [formula: string, quantity: string | undefined])[] = [
  ['=A1', 'illuminance'],
  ['=A1+B1', 'illuminance'],
  ['=A1-100', 'illuminance'],
  ['=A1*C1', 'illuminance'],
  ['=C1*A1', 'illuminance'],
  ['=A1*2', 'illuminance'],
  ['=-A1', 'illuminance'],
  ['=A1/B1', 'ratio'],
  ['=D1*E1', 'area'],
  ['=D1^2', 'area'],
  ['=SQRT(D1*E1)', 'length'],
  ['=G1/D1^2', 'illuminance'],
  ['=D1/E1', 'number'],
  ['=I1/J1', 'current'],
  ['=A1+D1', undefined],
  ['=A1+F1', 'illuminance'],
  ['=F1*2', undefined],
  ['=3*4', undefined],
  ['=A1>B1', 'truth'],
  ['=A1&" lx"', 'text'],
  ['=SUM(A1:B1)', 'illuminance'],
  ['=SUM(A1:D1)', undefined],
  ['=MAX(A1,B1)', 'illuminance'],
  ['=AVERAGE(H1,H1)', undefined],
  ['=MAX(H1,H1)', 'fNumber'],
  ['=IF(A1>B1,A1,B1)', 'illuminance'],
  ['=IF(A1>B1,A1,"")', 'illuminance'],
  ['=IF(A1>B1,A1,D1)', undefined],
  ['=ROUND(A1/B1,1)', 'ratio'],
  ['=COUNT(A1:D1)', 'number'],
  ['=STOPS(A1,B1)', 'stops'],
  ['=INVERSESQUARE(A1,D1,E1)', 'illuminance'],
  ['=LEVELAT(A1,2)', 'illuminance'],
  ['=LEVELAT(G1,2)', 'intensity'],
  ['=LEVELAT(100,2)', undefined],
];

describe('what a formula measures', () => {
  it.each(measured)('%s is %s', (formula, quantity) => {
    const { type, quantity: quantityAt } = openBook({ Walk: readings });
    type('A3', formula);
    expect(quantityAt('A3')).toBe(quantity);
  });

  it('goes on through cells, sheets and a long column', () => {
    const column = Array.from({ length: 3000 }, (_, row) => [
      row === 0 ? '1 lx' : `=A${String(row)}+1`,
    ]);
    const { quantity, value } = openBook({ Walk: column, Door: [['=Walk!A3000']] });
    expect(quantity('A1', 'Door')).toBe('illuminance');
    expect(value('A1', 'Door')).toBe(3000);
  });

  it('is plain in a round', () => {
    const { quantity } = openBook({ Walk: [['=B1', '=A1']] });
    expect(quantity('A1')).toBeUndefined();
  });

  it('yields to what was set on the cell, and the cell to none', () => {
    const opened = openBook({ Walk: [['400 lx', '=A1*2']] });
    const { document, means, idOf, must, quantity } = opened;
    const sheet = idOf('Walk');
    const region = { sheet, top: 0, left: 1, height: 1, width: 1 };
    must(setQuantity(document, means, [region], 'luminance'));
    expect(quantity('B1')).toBe('luminance');
    must(setQuantity(document, means, [region], null));
    expect(quantity('B1')).toBe('illuminance');
  });

  it('is that of the column where the cell says nothing', () => {
    const { document, means, idOf, must, quantity, type } = openBook({ Walk: [['400', '=A1*2']] });
    expect(quantity('B1')).toBeUndefined();
    must(setColumnQuantity(document, means, idOf('Walk'), [0], 'illuminance'));
    expect([quantity('A1'), quantity('B1')]).toEqual(['illuminance', 'illuminance']);
    type('A2', '500');
    type('B2', '=A2+A1');
    expect(quantity('B2')).toBe('illuminance');
  });
});

describe('a function that takes readings of several kinds', () => {
  it('hears when its cells come to measure something else', () => {
    const opened = openBook({ Walk: [['0.02', '24', '=EXPOSURETIME(A1,B1)', '=C1*1']] });
    // A plain number is an angle: 0.02° at 24 frames a second. Then it is 20 milliseconds.
    expect(opened.value('D1')).toBeCloseTo(0.02 / 360 / 24, 15);
    const region = { sheet: opened.idOf('Walk'), top: 0, left: 0, height: 1, width: 1 };
    opened.must(setQuantity(opened.document, opened.means, [region], 'time'));
    expect(opened.value('D1')).toBe(0.02);
    opened.book.undo();
    expect(opened.value('D1')).toBeCloseTo(0.02 / 360 / 24, 15);
  });
});
