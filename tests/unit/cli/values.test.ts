import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import { openBook } from '../engine/support/openBook.ts';
import { halfstop } from './terminal.ts';

describe('values', () => {
  it('prints a table with formulas, calculated, in base units', async () => {
    const table = 'point,lux,stops\nBench,400 lx,"=STOPS(B2,$B$2)"\nRope,50 fc,"=STOPS(B3,$B$2)"\n';
    const said = await halfstop(['values', 'walk.csv'], { files: { 'walk.csv': table } });
    const [head, bench, rope] = said.out.trimEnd().split('\n');
    expect([head, bench]).toEqual(['point,lux,stops', 'Bench,400,0']);
    const [, lux, stops] = (rope ?? '').split(',').map(Number);
    expect(lux).toBeCloseTo(50 / 0.3048 ** 2, 9);
    expect(stops).toBeCloseTo(Math.log2(50 / 0.3048 ** 2 / 400), 12);
    expect(said.code).toBe(0);
  });

  it('leaves a waiting cell empty, which is no failure', async () => {
    const said = await halfstop(['values', 'a.csv'], {
      files: { 'a.csv': '400,,"=STOPS(A1,B1)",x\n' },
    });
    expect(said).toMatchObject({ out: '400,,,x\n', code: 0 });
  });

  it('prints errors as their codes and ends with 1', async () => {
    const said = await halfstop(['values', 'a.csv'], {
      files: { 'a.csv': '0,=1/A1,=C1,"=STOPS(A1,2)"\n' },
    });
    expect(said).toMatchObject({ out: '0,#DIV/0!,#CYCLE!,#NUM!\n', code: 1 });
  });

  it('says where a formula cannot be read, and prints the rest', async () => {
    const said = await halfstop(['values', 'a.csv'], { files: { 'a.csv': '1,=SUM(,=A1+1\n' } });
    expect(said.out).toBe('1,#ERROR!,2\n');
    expect(said.err).toMatch(/^B1: /);
    expect(said.code).toBe(1);
  });

  it('takes a semicolon between the columns for a decimal comma', async () => {
    const said = await halfstop(['values', 'a.csv'], { files: { 'a.csv': '1,5;2,5;=A1+B1\n' } });
    expect(said.out).toBe('1.5,2.5,4\n');
  });

  it('escapes texts that another program would run, and no numbers', async () => {
    const said = await halfstop(['values', 'a.csv'], {
      files: { 'a.csv': '-1,\'=1+1,"say ""dim"""\n' },
    });
    expect(said.out).toBe('-1,\'=1+1,"say ""dim"""\n');
  });

  it('heads each sheet of a book with its name, and prints one bare', async () => {
    const { document } = openBook({
      Walk: [['400 lx', '=A1*2']],
      'Ice house': [['=Walk!B1'], ['']],
    });
    const files = { 'book.json': writeBook(document) };
    const all = await halfstop(['values', 'book.json'], { files });
    expect(all.out).toBe('# Walk\n400,800\n# Ice house\n800\n');
    const one = await halfstop(['values', '--sheet', 'ice house', 'book.json'], { files });
    expect(one.out).toBe('800\n');
  });

  it('reads a table in the alphabet of western Windows', async () => {
    const latin = Uint8Array.from([0x54, 0xfc, 0x72, 0x2c, 0x31, 0x0a]);
    const said = await halfstop(['values', 'a.csv'], { files: { 'a.csv': latin } });
    expect(said.out).toBe('Tür,1\n');
  });

  it.each([
    [['values'], 'A file is missing.'],
    [['values', 'a.csv', 'b.csv'], 'One file at a time'],
    [['values', 'none.csv'], 'none.csv cannot be read.'],
    [['values', '--sheet', 'Attic', 'a.csv'], 'There is no sheet Attic.'],
    [['values', 'photo.jpg'], 'photo.jpg is neither a book nor a table of text.'],
    [['values', 'other.json'], 'The file is not a Halfstop book'],
  ])('%j is wrong usage', async (argv, sentence) => {
    const said = await halfstop(argv, {
      files: { 'a.csv': '1\n', 'photo.jpg': '\xff\0\0', 'other.json': '{"form":"other"}' },
    });
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toContain(sentence);
  });
});
