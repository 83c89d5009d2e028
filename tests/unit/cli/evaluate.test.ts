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

describe('evaluate --fixture', () => {
  const bulb = 'IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 60\n0 180\n0\n100 100\n';
  const broken = bulb.replace('100 100', '100 x');

  it('reads photometric files under their names, one after the other', async () => {
    const files = { 'a.ies': bulb, 'b.ies': bulb.replace('100 100', '400 400') };
    const said = await halfstop(
      ['evaluate', '--fixture', 'Key=a.ies', '--fixture=Fill=b.ies', 'FIXTURELUX("key", 2)'].concat(
        'FIXTURELUX("Fill", 2)',
        'FIXTUREWATTS("Fill")',
      ),
      { files },
    );
    expect(lines(said)).toMatchObject([
      { value: 25, quantity: 'illuminance' },
      { value: 100 },
      { value: 60, quantity: 'power' },
    ]);
    expect(said.code).toBe(0);
  });

  it('puts a file in place of the fixture of that name in the book', async () => {
    const twice = ['--fixture', 'Key=a.ies', '--fixture', 'Key=b.ies'];
    const files = { 'a.ies': bulb, 'b.ies': bulb.replace('100 100', '400 400') };
    const said = await halfstop(['evaluate', ...twice, 'FIXTURECANDELA("Key", 0)'], { files });
    expect(lines(said)).toMatchObject([{ value: 400 }]);
  });

  it('says the line of a broken file, and works nothing out', async () => {
    const said = await halfstop(['evaluate', '--fixture', 'Key=a.ies', '1+1'], {
      files: { 'a.ies': broken },
    });
    expect(said.code).toBe(2);
    expect(said.out).toBe('');
    expect(said.err).toContain('a.ies: Line 7: “x” is no number; intensity 2 of 2');
  });

  it('wants a name and a file', async () => {
    for (const given of ['Key', '=a.ies', 'Key=']) {
      const said = await halfstop(['evaluate', '--fixture', given, '1+1']);
      expect(said).toMatchObject({ code: 2, out: '' });
      expect(said.err).toContain('--fixture wants NAME=FILE');
    }
  });

  it('reads the tilt file that lies beside, and says where it is missing', async () => {
    const tilted = bulb.replace('NONE', 'LAMP.TLT');
    const files = { 'set/a.ies': tilted, 'set/LAMP.TLT': '1\n2\n0 90\n0.5 1\n' };
    const ask = ['evaluate', '--fixture', 'Key=set/a.ies', 'FIXTURECANDELA("Key", 0)'];
    expect(lines(await halfstop(ask, { files }))).toMatchObject([{ value: 50 }]);
    const alone = await halfstop(ask, { files: { 'set/a.ies': tilted } });
    expect(lines(alone)).toMatchObject([{ value: 100 }]);
    expect(alone.err).toContain('It names a tilt file, LAMP.TLT, which was not there');
  });
});
