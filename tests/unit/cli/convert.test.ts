import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { halfstop, type Said } from './terminal.ts';

const template = (name: string) =>
  readFileSync(new URL(`../../../templates/${name}/book.json`, import.meta.url), 'utf8');

const loft = { 'loft.json': template('harbour-hours') };

function writtenText({ files = {} }: Said, path: string): string {
  const content = files[path];
  if (content === undefined) throw new Error(`${path} was not written`);
  return typeof content === 'string' ? content : new TextDecoder().decode(content);
}

describe('convert', () => {
  it('writes a table for each sheet of a book', async () => {
    const said = await halfstop(['convert', 'loft.json', 'out.csv'], { files: loft });
    expect(said).toMatchObject({ code: 0, out: '', err: '' });
    expect(Object.keys(said.files ?? {})).toEqual(
      expect.arrayContaining(['out-Sail loft.csv', 'out-Boat shed.csv', 'out-Sun.csv']),
    );
    const fill = writtenText(said, 'out-Sail loft.csv')
      .split(/\r?\n/)
      .find((line) => line.startsWith('Fill side of face'));
    expect(fill).toContain('stop over');
  });

  it('takes a table in and gives a book', async () => {
    const files = { 'walk.csv': 'Point,Level (lx)\nKey,800\nFill,250\n' };
    const said = await halfstop(['convert', 'walk.csv', 'walk.json'], { files });
    expect(said).toMatchObject({ code: 0, out: '', err: '' });
    const read = readBook(writtenText(said, 'walk.json'));
    if (!read.ok) throw new Error(read.reason);
    const [sheet] = read.document.sheets;
    const contents = [...(sheet?.cells() ?? [])].map(({ cell }) => cell.content);
    expect(contents).toContainEqual({ kind: 'number', value: 250 });
    expect(contents).toContainEqual({ kind: 'text', text: 'Fill' });
  });

  it.each(['xlsx', 'ods'])('%s out and in again keeps the numbers', async (form) => {
    const out = await halfstop(['convert', 'loft.json', `loft.${form}`], { files: loft });
    const bytes = out.files?.[`loft.${form}`];
    if (!(bytes instanceof Uint8Array)) throw new Error(`no ${form} was written`);
    const back = await halfstop(['convert', `loft.${form}`, 'back.json'], {
      files: { [`loft.${form}`]: bytes },
    });
    const read = readBook(writtenText(back, 'back.json'));
    if (!read.ok) throw new Error(read.reason);
    const sheet = read.document.sheetNamed('Sail loft');
    const numbers = [...(sheet?.cells() ?? [])].flatMap(({ cell }) =>
      cell.content.kind === 'number' ? [cell.content.value] : [],
    );
    // The window of the loft walk, and the flat reading of the rope bench.
    expect(numbers).toContain(1200);
    expect(numbers).toContain(85);
  });

  it('formulas go out live, or as what they come to with --values', async () => {
    const files = { 'sums.csv': 'a,b,sum\n1,2,"=A2+B2"\n' };
    const live = await halfstop(['convert', 'sums.csv', 'live.ods'], { files });
    const fixed = await halfstop(['convert', '--values', 'sums.csv', 'fixed.ods'], { files });
    const formulas = async (said: Said, path: string) => {
      const bytes = said.files?.[path];
      if (bytes === undefined) throw new Error(`${path} was not written`);
      const book = await halfstop(['convert', path, 'b.json'], { files: { [path]: bytes } });
      return writtenText(book, 'b.json').includes('=A2+B2');
    };
    expect(await formulas(live, 'live.ods')).toBe(true);
    expect(await formulas(fixed, 'fixed.ods')).toBe(false);
  });

  it.each([
    [['convert', 'loft.json'], 'Two files are wanted: IN and OUT.'],
    [['convert', 'loft.json', 'a.csv', 'b.csv'], 'Two files at a time; options come before them.'],
    [['convert', 'loft.json', 'a.pdf'], 'a.pdf ends in none of .json'],
    [['convert', '--decimal', 'x', 'loft.json', 'a.csv'], '--decimal wants . or , and not x.'],
    [['convert', 'gone.json', 'a.csv'], 'gone.json'],
    [['convert', 'torn.xlsx', 'a.json'], 'torn.xlsx: '],
  ])('%j is refused with a sentence, and nothing is written', async (argv, sentence) => {
    const files = { ...loft, 'torn.xlsx': 'PK and then nothing' };
    const said = await halfstop(argv, { files });
    expect(said.code).toBe(2);
    expect(said.err).toContain(sentence);
    expect(said.files).toBeUndefined();
  });
});
