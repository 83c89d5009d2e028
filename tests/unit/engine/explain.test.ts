import { describe, expect, it } from 'vitest';
import { defineName } from '../../../src/book/make/names.ts';
import { openBook } from './support/openBook.ts';

describe('why a cell is what it is', () => {
  it('shows the function with what went in, where from, and what was left out', () => {
    const { engine, spot, idOf } = openBook({
      Walk: [
        ['400 lx', '100'],
        ['=ROUND(STOPS(A1,$B$1),1)', '=EVLUX(A2*2)'],
      ],
    });
    const stops = engine.explain(spot('A2'));
    expect(stops).toMatchObject({ value: 2, quantity: 'stops', remarks: [] });
    expect(stops.call?.definition.name).toBe('STOPS');
    const at = (row: number, column: number) => ({
      sheet: idOf('Walk'),
      from: { row, column },
      to: { row, column },
    });
    expect(stops.call?.args).toEqual([
      { name: 'level', quantity: 'illuminance', text: 'A1', value: 400, block: at(0, 0) },
      { name: 'reference', quantity: undefined, text: '$B$1', value: 100, block: at(0, 1) },
    ]);
    expect(stops.precedents).toEqual([at(0, 0), at(0, 1)]);
    expect(stops.dependents).toEqual([spot('B2')]);
    const evLux = engine.explain(spot('B2'));
    expect(evLux.call?.args).toMatchObject([
      { name: 'ev', text: 'A2*2', value: 4 },
      { name: 'receptor', leftOut: true, text: '' },
    ]);
  });

  it('follows ranges, names and other sheets', () => {
    const { engine, spot, idOf, must, document, means } = openBook({
      Walk: [['400 lx'], ['200 lx'], ['=SPREAD(A1:A2)']],
      Door: [['=Walk!A3', '=Key*2']],
    });
    const cell = (sheet: string, row: number, column: number) => ({
      sheet,
      from: { row, column },
      to: { row, column },
    });
    expect(engine.explain(spot('A3')).precedents).toEqual([
      { sheet: idOf('Walk'), from: { row: 0, column: 0 }, to: { row: 1, column: 0 } },
    ]);
    expect(engine.explain(spot('A3')).call?.args[0]).toMatchObject({
      text: 'A1:A2',
      value: undefined,
    });
    expect(engine.explain(spot('A2')).dependents).toEqual([spot('A3')]);
    expect(engine.explain(spot('A3')).dependents).toEqual([spot('A1', 'Door')]);
    expect(engine.explain(spot('B1', 'Door')).value).toMatchObject({ code: '#NAME?' });
    must(
      defineName(document, means, 'Key', {
        sheet: idOf('Walk'),
        top: 0,
        left: 0,
        height: 1,
        width: 1,
      }),
    );
    expect(engine.explain(spot('B1', 'Door'))).toMatchObject({
      value: 800,
      quantity: 'illuminance',
      precedents: [cell(idOf('Walk'), 0, 0)],
    });
    expect(engine.explain(spot('A1')).dependents).toContainEqual(spot('B1', 'Door'));
  });

  it('remarks on a constant that is in use but not recommended', () => {
    const { engine, spot } = openBook({
      Walk: [['=SPOTF(100,100,1/50,14)', '=SPOTF(100,100,1/50)']],
    });
    expect(engine.explain(spot('A1')).remarks).toEqual([
      'SPOTF: constant is usually from 10.6 to 13.4 (ISO 2720), not 14.',
    ]);
    expect(engine.explain(spot('B1')).remarks).toEqual([]);
  });

  it('has nothing to say about an empty cell but its readers', () => {
    const { engine, spot } = openBook({ Walk: [['', '=A1*2']] });
    expect(engine.explain(spot('A1'))).toEqual({
      value: null,
      quantity: undefined,
      precedents: [],
      dependents: [spot('B1')],
      remarks: [],
    });
  });
});

describe('a formula that is in no cell', () => {
  it('reads the sheet it is asked from, and brings no line into use', () => {
    const { engine, idOf, document } = openBook({ Walk: [['400 lx']], Door: [['100 lx']] });
    expect(engine.evaluate('A1*2')).toMatchObject({ value: 800, quantity: 'illuminance' });
    expect(engine.evaluate('=A1*2', idOf('Door'))).toMatchObject({ value: 200 });
    expect(engine.evaluate('STOPS(Walk!A1,ZZ900)')).toMatchObject({
      value: { message: 'waiting for reference (ZZ900)', waiting: true },
    });
    expect(document.sheetNamed('Walk')?.rows.length).toBe(1);
  });

  it.each([
    ['STOPS(', '#ERROR!'],
    ['Attic!A1', '#REF!'],
    ['{1,2}', '#ERROR!'],
    ['', '#ERROR!'],
    ['A1:A2', '#VALUE!'],
    ['Key', '#NAME?'],
  ])('%j answers %s with a sentence', (formula, code) => {
    const { value } = openBook({ Walk: [['1']] }).engine.evaluate(formula);
    expect(value).toMatchObject({ code });
    expect(typeof value === 'object' && value?.message).toMatch(/^[A-Z“].{10,}\.$/);
  });
});

describe('listening', () => {
  it('tells the cells that another value came to, and nothing of a format', () => {
    const { engine, type, spot, book, idOf, document } = openBook({
      Walk: [['1', '=A1*2', '=5', '=B1+1']],
    });
    const heard: unknown[] = [];
    const stop = engine.listen(({ all, cells }) => heard.push(all, cells));
    type('A1', '2');
    expect(heard).toEqual([false, expect.arrayContaining([spot('A1'), spot('B1'), spot('D1')])]);
    expect(heard[1]).toHaveLength(3);
    const row = document.sheetNamed('Walk')?.rows.idAt(0) ?? '';
    const column = document.sheetNamed('Walk')?.columns.idAt(0) ?? '';
    const cell = document.sheetNamed('Walk')?.cell(row, column);
    book.run({
      label: 'Bold',
      steps: [
        {
          kind: 'setCells',
          sheet: idOf('Walk'),
          cells: [
            {
              row,
              column,
              cell: { ...cell, content: { kind: 'number', value: 2 }, format: { bold: true } },
            },
          ],
        },
      ],
    });
    expect(heard).toHaveLength(2);
    stop();
    type('A1', '3');
    expect(heard).toHaveLength(2);
  });
});
