import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import { openBook } from '../engine/support/openBook.ts';
import { halfstop, lines } from './terminal.ts';

describe('evaluate', () => {
  it('prints value, quantity and how people write it, one object a line', async () => {
    const said = await halfstop(['evaluate', 'STOPS(400,100)', '=2+1', '"Bench"', 'TRUE']);
    expect(lines(said)).toEqual([
      { formula: 'STOPS(400,100)', value: 2, quantity: 'stops', display: '+2 stops' },
      { formula: '=2+1', value: 3, quantity: null, display: '3' },
      { formula: '"Bench"', value: 'Bench', quantity: 'text', display: 'Bench' },
      { formula: 'TRUE', value: true, quantity: 'truth', display: 'TRUE' },
    ]);
    expect(said.code).toBe(0);
    expect(said.err).toBe('');
  });

  it('gives a value in base units, whatever unit was written', async () => {
    const said = await halfstop(['evaluate', 'INVERSESQUARE("100 fc","10 ft","5 ft")']);
    const [{ value, quantity }] = lines(said) as [{ value: number; quantity: string }];
    expect(quantity).toBe('illuminance');
    // Four times 100 footcandles; a footcandle is 1 / 0.3048² lx by the international foot.
    expect(value).toBeCloseTo(400 / 0.3048 ** 2, 8);
  });

  it('takes a formula that begins with a sign for a formula and not for an option', async () => {
    const said = await halfstop(['evaluate', '-STOPS(1,2)', '--2']);
    expect(lines(said)).toMatchObject([{ value: 1 }, { value: 2 }]);
  });

  it('says which reading is missing, and that it waits', async () => {
    const said = await halfstop(['evaluate', 'STOPS(400,B2)', '1+1']);
    expect(lines(said)).toEqual([
      {
        formula: 'STOPS(400,B2)',
        error: '#N/A',
        message: 'waiting for reference (B2)',
        waiting: true,
      },
      { formula: '1+1', value: 2, quantity: null, display: '2' },
    ]);
    expect(said.code).toBe(1);
  });

  it('reads formulas from standard input, blank lines skipped', async () => {
    const said = await halfstop(['evaluate', '-'], { input: 'STOPS(2,1)\n\n  \r\n=LGO(2)\n' });
    expect(lines(said)).toMatchObject([
      { formula: 'STOPS(2,1)', value: 1 },
      {
        formula: '=LGO(2)',
        error: '#NAME?',
        message: 'There is no function LGO. The nearest is LOG.',
      },
    ]);
    expect(said.code).toBe(1);
  });

  it('shows numbers with the decimal sign asked for, and reads formulas with a point', async () => {
    const said = await halfstop(['evaluate', '--decimal', ',', '1.5*1']);
    expect(lines(said)).toMatchObject([{ value: 1.5, display: '1,5' }]);
  });

  it('sees the cells and names of a book', async () => {
    const { document } = openBook({ Walk: [['Key', '400 lx']], Door: [['=Walk!B1/4']] });
    const files = { 'harbour.json': writeBook(document) };
    const said = await halfstop(['evaluate', '--book', 'harbour.json', 'STOPS(B1,Door!A1)'], {
      files,
    });
    expect(lines(said)).toMatchObject([{ value: 2 }]);
    const onDoor = await halfstop(['evaluate', '--book=harbour.json', '--sheet', 'door', 'A1*1'], {
      files,
    });
    expect(lines(onDoor)).toMatchObject([{ value: 100, quantity: 'illuminance' }]);
  });

  it.each([
    [[], 'Usage:'],
    [['light'], 'There is no command light.'],
    [['evaluate'], 'A formula is missing.'],
    [['evaluate', '--colour', 'x', '1'], 'There is no option --colour here.'],
    [['evaluate', '--book'], '--book wants a file.'],
    [['evaluate', '--decimal', ';', '1'], '--decimal wants . or , and not ;.'],
    [['evaluate', '-', '1+1'], '- stands alone'],
    [['evaluate', '--book', 'none.json', '1'], 'none.json cannot be read.'],
    [['evaluate', '--sheet', 'Attic', '1'], 'There is no sheet Attic.'],
  ])('%j is wrong usage', async (argv, sentence) => {
    const said = await halfstop(argv);
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toContain(sentence);
    expect(said.err).toContain('Usage:');
  });

  it('refuses a book that is cut short, with what was wrong', async () => {
    const { document } = openBook({ Walk: [['Key', '400 lx']] });
    const whole = writeBook(document);
    const files = { 'cut.json': whole.slice(0, whole.length / 2) };
    const said = await halfstop(['evaluate', '--book', 'cut.json', '1'], { files });
    expect(said.code).toBe(2);
    expect(said.err).toContain('cut short or damaged');
  });
});
