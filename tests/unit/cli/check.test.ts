import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import { openBook } from '../engine/support/openBook.ts';
import { halfstop, lines } from './terminal.ts';

const template = (name: string) =>
  readFileSync(new URL(`../../../templates/${name}/book.json`, import.meta.url), 'utf8');

function mixed(): string {
  const { document } = openBook({
    Walk: [['400 lx', '2 m', '=A1+B1']],
    'Boat shed': [
      ['=AVERAGE(B1:C1)', 'f/4', 'f/5.6'],
      ['=READINGF(B1,"dome",800,1/50)', '=READINGF(B1,"flat",800,1/50)', '=FSTOPS(A2,B2)'],
    ],
  });
  return writeBook(document);
}

describe('check', () => {
  it('names each cell with a sentence and ends with 1', async () => {
    const said = await halfstop(['check', 'mixed.json'], { files: { 'mixed.json': mixed() } });
    expect(said.out.split('\n')).toEqual([
      'Walk!C1: A1 is an illuminance and B1 is a distance: they cannot be added. Check which cells are meant.',
      'Boat shed!A1: AVERAGE does not hold for f-numbers (B1:C1). Light averages as the square of f-numbers: use FAVERAGE.',
      '',
    ]);
    expect(said).toMatchObject({ code: 1, err: '' });
  });

  it('gives the same as one JSON object a line', async () => {
    const said = await halfstop(['check', '--json', 'm.json'], { files: { 'm.json': mixed() } });
    expect(lines(said)).toMatchObject([
      { sheet: 'Walk', cell: 'C1', about: 'unit' },
      { sheet: 'Boat shed', cell: 'A1', about: 'unit' },
    ]);
    expect(said.code).toBe(1);
  });

  it('tells what is only worth a look when asked, and does not count it', async () => {
    const files = { 'loft.json': template('harbour-hours') };
    const quiet = await halfstop(['check', 'loft.json'], { files });
    expect(quiet).toEqual({ code: 0, out: '', err: '' });
    const noted = await halfstop(['check', '--notes', 'loft.json'], { files });
    expect(noted.code).toBe(0);
    expect(noted.out).toContain('Sail loft!E17: Dome against flat');
  });

  it('reads a table with formulas', async () => {
    const files = { 'walk.csv': 'lx,m,off\n400 lx,2 m,"=STOPS(A2,B2)"\n' };
    const said = await halfstop(['check', 'walk.csv'], { files });
    expect(said.out).toBe(
      'Sheet 1!C2: STOPS wants a level of light as reference; B2 is a distance. Point it at a level of light.\n',
    );
    expect(said.code).toBe(1);
  });

  it.each([
    [['check'], 'A file is missing.'],
    [['check', 'nowhere.json'], 'nowhere.json cannot be read.'],
    [['check', 'broken.json'], 'broken.json: '],
    [['check', '--loud', 'broken.json'], 'There is no option --loud here.'],
    [['check', 'a.json', 'b.json'], 'One file at a time'],
  ])('%j cannot be used and ends with 2', async (argv, sentence) => {
    const said = await halfstop(argv, { files: { 'broken.json': '{"halfstop":' } });
    expect(said.code).toBe(2);
    expect(said.err).toContain(sentence);
    expect(said.out).toBe('');
  });
});
