import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { functionNames, isFunction } from '../../../src/engine/index.ts';
import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import { exampleSpectra } from '../../../functions/spectrum/exampleSpectra.ts';
import { openBook } from './support/openBook.ts';

const rows = [
  ['Bench', '4', '1'],
  ['Rope', '6', '1.5'],
  ['Window', '9', 'TRUE'],
];

/** Ordinary spreadsheet functions on that sheet, worked by hand (OpenDocument 1.2, part 2, names them). */
const expected: readonly (readonly [string, number | string | boolean])[] = [
  ['=SUM(B1:B3)', 19],
  ['=AVERAGE(B1,B2)', 5],
  ['=ROUND(B3/B1,1)', 2.3],
  ['=IF(B1>B2,"over","under")', 'under'],
  ['=IFERROR(1/0,7)', 7],
  ['=MIN(B1:B3)+MAX(B1:B3)', 13],
  ['=COUNT(A1:C3)', 5],
  ['=COUNTA(A1:A3)', 3],
  ['=VLOOKUP("Rope",A1:C3,3,FALSE)', 1.5],
  ['=INDEX(B1:B3,MATCH("Window",A1:A3,0))', 9],
  ['=XLOOKUP("Rope",A1:A3,B1:B3)', 6],
  ['=SUMIF(A1:A3,"R*",B1:B3)', 6],
  ['=COUNTIF(B1:B3,">4")', 2],
  ['=SUMPRODUCT((B1:B3>4)*B1:B3)', 15],
  ['=SUM(FILTER(B1:B3,B1:B3>4))', 15],
  ['=TEXT(0.5,"0.00")', '0.50'],
  ['=YEAR(DATE(2026,3,9))', 2026],
  ['=DATEVALUE("2026-03-09")-DATE(2026,3,8)', 1],
  ['=A1&" "&B1', 'Bench 4'],
  // OpenFormula, INT: "rounds down to the nearest integer", -1.1 to -2.
  ['=INT(-1.1)', -2],
  ['=-2^2', 4],
  ['=2^3^2', 64],
  ['=1E3+TRUE', 1001],
  ['=50%*B2', 3],
  ['=AND(B1<B2,NOT(FALSE))', true],
  ['=ROWS(B1:B3)', 3],
  ['=SQRT(B1)*PI()/PI()', 2],
  ['=LOG(8,2)', 3],
  ['=MOD(B3,B1)', 1],
  ['=LEN("ND 0.6")', 6],
];

describe('ordinary functions', () => {
  it.each(expected)('%s', (formula, result) => {
    const { type, value } = openBook({ Walk: rows });
    type('E1', formula);
    expect(value('E1')).toBe(result);
  });

  it('take a text for a text: 4:1 is no time and 1/50 no date', () => {
    const { value } = openBook({
      Walk: [["'4:1", "'1/50", '=A1+0', '=ISTEXT(B1)', "'=1+1", "'12%"]],
    });
    expect(value('A1')).toBe('4:1');
    expect(value('B1')).toBe('1/50');
    expect(value('C1')).toMatchObject({ code: '#VALUE!' });
    expect(value('D1')).toBe(true);
    expect(value('E1')).toBe('=1+1');
    expect(value('F1')).toBe('12%');
  });

  it('calculate with all digits', () => {
    const { value } = openBook({ Walk: [['=1/3', '=0.1+0.2']] });
    expect(value('A1')).toBe(1 / 3);
    expect(value('B1')).toBe(0.1 + 0.2);
  });

  it('never spill over other cells', () => {
    const { value, type } = openBook({
      Walk: [
        ['1', '2'],
        ['', ''],
      ],
    });
    type('A2', '=TRANSPOSE(A1:B1)');
    expect(value('A2')).toMatchObject({ code: '#VALUE!' });
    expect(value('A3')).toBeNull();
    type('A2', '=SUM(TRANSPOSE(A1:B1))');
    expect(value('A2')).toBe(3);
  });

  it('know the time and chance only from outside', () => {
    const clock = () => new Date(2026, 2, 9, 18, 0, 0);
    const { value } = openBook(
      { Walk: [['=TODAY()=DATE(2026,3,9)', '=NOW()-TODAY()', '=RAND()', '=RANDBETWEEN(1,6)']] },
      { clock, chance: () => 0.5 },
    );
    expect(['A1', 'B1', 'C1', 'D1'].map((address) => value(address))).toEqual([true, 0.75, 0.5, 4]);
  });
});

describe('the library', () => {
  it('replaces no function of the engine', () => {
    const plugins = HyperFormula.getAllFunctionPlugins().map((plugin) =>
      Object.keys(plugin.implementedFunctions),
    );
    const builtIn = new Set(plugins.filter((names) => !names.includes('STOPS')).flat());
    expect(builtIn.has('SUM')).toBe(true);
    expect(catalogue.filter(({ name }) => builtIn.has(name))).toEqual([]);
  });

  it('is known to formulas, whole', () => {
    expect(catalogue.filter(({ name }) => !functionNames().has(name))).toEqual([]);
    expect(isFunction('stops')).toBe(true);
    expect(isFunction('HALFSTOP.REFUSE')).toBe(false);
  });

  it('gives in a cell what its examples say', () => {
    const examples = catalogue.flatMap(({ name, examples }) =>
      examples.map(({ args, result, within }) => ({ name, args, result, within })),
    );
    const literal = (value: unknown): string => {
      if (value === undefined || value === null) return '';
      if (Array.isArray(value)) {
        const isTable = value.some((row) => Array.isArray(row));
        return `{${value.map(isTable ? rowOf : literal).join(';')}}`;
      }
      return typeof value === 'string' ? `"${value}"` : String(value).toUpperCase();
    };
    const rowOf = (row: unknown): string =>
      (row as unknown[]).map((value) => literal(value ?? '')).join(',');
    const { engine } = openBook(
      { Walk: [] },
      { fixtures: () => exampleFixtures, spectra: () => exampleSpectra },
    );
    for (const { name, args, result, within } of examples) {
      if (args.some((value) => Array.isArray(value) && value.includes(null))) continue;
      const formula = `=${name}(${args.map(literal).join(',')})`;
      const { value } = engine.evaluate(formula);
      if (typeof result !== 'number') expect(value, formula).toBe(result);
      else {
        expect(typeof value, `${formula} ${JSON.stringify(value)}`).toBe('number');
        const off = Math.abs(Number(value) - result);
        expect(off, formula).toBeLessThanOrEqual(within ?? 1e-12 * Math.max(1, Math.abs(result)));
      }
    }
    expect(examples.length).toBeGreaterThan(100);
  });

  it('is called once for each cell where SUMPRODUCT hands over a range', () => {
    const { value, type } = openBook({ Walk: [['200', '400', '800']] });
    type('A2', '=SUMPRODUCT(STOPS(A1:C1,100))');
    expect(value('A2')).toBe(1 + 2 + 3);
  });
});
