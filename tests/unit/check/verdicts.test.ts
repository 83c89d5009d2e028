import { describe, expect, it } from 'vitest';
import { describeCells, setQuantity, setTarget } from '../../../src/book/make/properties.ts';
import { describeSheet } from '../../../src/book/make/sheets.ts';
import { agreementOf } from '../../../src/check/agreement.ts';
import { judgingPlaces, pointsAmong } from '../../../src/check/points.ts';
import { usualTolerance, verdictOf } from '../../../src/check/verdicts.ts';
import type { Settings } from '../../../src/book/types.ts';
import { openBook } from '../engine/support/openBook.ts';

interface Aim {
  readonly reading: string;
  readonly target: string;
  readonly own?: number;
  readonly sheet?: number;
  readonly settings?: Partial<Settings>;
}

function verdict({ reading, target, own, sheet, settings }: Aim) {
  const opened = openBook(
    { Walk: [[reading, 'f/4', '3200 K', '400 lx']] },
    { ...(settings && { settings }) },
  );
  const { document, means, engine, must, spot, idOf } = opened;
  must(setTarget(document, means, spot('A1'), target));
  const region = { sheet: idOf('Walk'), top: 0, left: 0, height: 1, width: 1 };
  if (own !== undefined) must(describeCells(document, means, [region], { tolerance: own }));
  if (sheet !== undefined) must(describeSheet(document, idOf('Walk'), { tolerance: sheet }));
  return verdictOf(document, engine, spot('A1'));
}

describe('a reading with a target says how far off it is', () => {
  // Stops are doublings of light (ISO 2720: N² goes with E); mired are a million over kelvin (CIE).
  it.each<[reading: string, target: string, words: string, shape: string, by: number]>([
    ['400 lx', '400 lx', 'agrees', 'agrees', 0],
    ['200 lx', '400 lx', '1 stop under', 'under', -1],
    ['f/5.6', 'f/4', '1 stop over', 'over', 1],
    ['f/4 1/3', 'f/4', 'agrees', 'agrees', 1 / 3],
    ['f/4 2/3', 'f/4', '2/3 stop over', 'over', 2 / 3],
    ['f/2.8', '=FNUMBERAT(B1,-2)', '1 stop over', 'over', 1],
    ['100 lx', '=D1/2', '1 stop under', 'under', -1],
    ['11 EV', '12.5 EV', '1 1/2 stops under', 'under', -1.5],
    ['+2 stops', '+1 stops', '1 stop over', 'over', 1],
    ['80 cd/m2', '20 cd/m2', '2 stops over', 'over', 2],
    ['0 lx', '400 lx', 'no light', 'under', -Infinity],
    ['3300 K', '3200 K', 'agrees', 'agrees', 1e6 / 3300 - 1e6 / 3200],
    ['3200 K', '5500 K', '131 mired too warm, a full 3200-to-5500 correction', 'over', 130.6818],
    [
      '3250 K',
      '5400 K',
      '123 mired too warm, nearly a full 3200-to-5500 correction',
      'over',
      122.5071,
    ],
    ['5600 K', '=C1', '134 mired too blue, a full 3200-to-5500 correction', 'under', -133.9286],
    [
      '6000 K',
      '=C1',
      '146 mired too blue, just over a full 3200-to-5500 correction',
      'under',
      -145.8333,
    ],
    ['3900 K', '=C1', '56 mired too blue', 'under', -56.0897],
    ['200 mired', '178 mired', '22 mired too warm', 'over', 22],
    ['Duv +0.0050', 'Duv +0.0010', 'green by 0.0040', 'over', 0.004],
    ['Duv -0.0050', 'Duv 0.0000', 'magenta by 0.0050', 'under', -0.005],
    ['Duv +0.0020', 'Duv 0.0000', 'agrees', 'agrees', 0.002],
  ])('%s for %s: %s', (reading, target, words, shape, by) => {
    const got = verdict({ reading, target });
    expect(got).toMatchObject({ words, shape });
    if (Number.isFinite(by)) expect(got?.off?.by).toBeCloseTo(by, 3);
    else expect(got?.off?.by).toBe(by);
  });

  it('says so with the decimal sign of the book', () => {
    const comma = { settings: { decimal: ',' } } as const;
    expect(verdict({ reading: '246 lx', target: '400 lx', ...comma })?.words).toBe(
      '0,7 stop under',
    );
    const duv = verdict({ reading: 'Duv +0,0050', target: 'Duv 0,0000', ...comma });
    expect(duv?.words).toBe('green by 0,0050');
  });
});

describe('the tolerance is', () => {
  const off = { reading: '300 lx', target: '400 lx' }; // 0.415 stop under
  it('the book’s, a third of a stop unless changed', () => {
    expect(verdict(off)).toMatchObject({ shape: 'under', tolerance: 1 / 3 });
    expect(verdict({ ...off, settings: { tolerance: 1 / 2 } })?.shape).toBe('agrees');
  });

  it('else the sheet’s, else the cell’s own', () => {
    expect(verdict({ ...off, sheet: 1 / 2 })?.shape).toBe('agrees');
    expect(verdict({ ...off, sheet: 1 / 2, own: 1 / 4 })?.shape).toBe('under');
    expect(verdict({ ...off, own: 1 / 2 })?.shape).toBe('agrees');
  });

  it('for a colour its cell’s own, else a usual one, and never the stops of a sheet', () => {
    const colour = { reading: '3100 K', target: '3200 K' }; // 10.08 mired
    expect(verdict(colour)).toMatchObject({ shape: 'over', tolerance: usualTolerance.mired });
    expect(verdict({ ...colour, sheet: 20 })?.shape).toBe('over');
    expect(verdict({ ...colour, own: 20 })?.shape).toBe('agrees');
    const tint = { reading: 'Duv +0.0040', target: 'Duv 0.0000' };
    expect(verdict(tint)).toMatchObject({ shape: 'over', tolerance: usualTolerance.duv });
    expect(verdict({ ...tint, own: 0.005 })?.shape).toBe('agrees');
  });
});

describe('no verdict is made up', () => {
  it('while the reading, or what the target needs, is missing', () => {
    expect(verdict({ reading: '', target: '400' })).toEqual({
      words: 'waiting for this reading',
      shape: 'waits',
      target: 400,
    });
    expect(verdict({ reading: 'f/4', target: '=FNUMBERAT(Z9,-1)' })).toMatchObject({
      shape: 'waits',
      words: 'waiting for f_number (Z9)',
    });
  });

  it('between a reading in lux and a target in f-numbers', () => {
    expect(verdict({ reading: '11 fc', target: '=FNUMBERAT(B1,-1)' })).toEqual({
      words:
        'The reading is an illuminance and the target an f-number: turn one into the other to compare them.',
      target: expect.closeTo(2 * Math.SQRT2, 12),
    });
  });

  it('for a plain number, a text, an error or a cell without a target', () => {
    expect(verdict({ reading: '7', target: '8' })?.words).toBe(
      'A plain number is not held against a target.',
    );
    expect(verdict({ reading: 'Bench', target: '8' })?.words).toBe('This reading is no number.');
    expect(verdict({ reading: '3 m', target: '4 m' })?.words).toBe(
      'A distance is not held against a target.',
    );
    expect(verdict({ reading: 'f/4', target: '=1/0' })?.shape).toBeUndefined();
    const { document, engine, spot } = openBook({ Walk: [['400 lx']] });
    expect(verdictOf(document, engine, spot('A1'))).toBeUndefined();
  });
});

function pointsOn({ document, engine, idOf }: ReturnType<typeof openBook>, name: string) {
  const sheet = document.sheet(idOf(name));
  if (!sheet) throw new Error(`There is no sheet ${name}.`);
  return pointsAmong(document, engine, judgingPlaces(sheet));
}

describe('how many points agree', () => {
  function walk() {
    const opened = openBook({
      Walk: [
        ['Key side', '400 lx', ''],
        ['Fill side', '150 lx', ''],
        ['Canvas', '', ''],
        ['Bench', '400 lx', '=VERDICT(STOPS(B4,B1))'],
        ['Rope', '100 lx', '=VERDICT(STOPS(B5,B1))'],
        ['Shed', '', '=VERDICT(STOPS(B6,B1))'],
      ],
      Door: [['3200 K']],
    });
    const { document, means, must, spot } = opened;
    for (const [at, target] of [
      ['B1', '400 lx'],
      ['B2', '=B1/4'],
      ['B3', '100'],
      // The row has a verdict of its own: it counts once.
      ['B4', '100 lx'],
    ] as const)
      must(setTarget(document, means, spot(at), target));
    must(setTarget(document, means, spot('A1', 'Door'), '3200 K'));
    return opened;
  }

  it('is told for a sheet and for the book, with the places that do not', () => {
    const opened = walk();
    const points = pointsOn(opened, 'Walk');
    expect(agreementOf(points)).toEqual({
      agree: 2,
      off: 2,
      waiting: 2,
      words: '2 of 6 points agree, 2 are off, 2 wait',
    });
    const others = points.filter(({ shape }) => shape !== 'agrees');
    expect(others.map(({ place }) => place)).toEqual(
      ['B2', 'B3', 'C5', 'C6'].map((at) => opened.spot(at)),
    );
    const door = pointsOn(opened, 'Door');
    expect(agreementOf([...points, ...door]).words).toBe('3 of 7 points agree, 2 are off, 2 wait');
    expect(agreementOf(door).words).toBe('1 of 1 point agrees');
  });

  it('counts a colour’s verdict; what is declared a text tells of one and is no point', () => {
    const opened = openBook({
      Match: [
        ['Window', '=COLOURVERDICT(MIREDSHIFT(3200,C1),0.005)', '6900 K'],
        ['Lamp', '=COLOURVERDICT(MIREDSHIFT(3200,C2),0)', ''],
        ['Both', '=COLOURVERDICT(-50,0)'],
      ],
    });
    const { document, means, engine, must, idOf, spot } = opened;
    const both = { sheet: idOf('Match'), top: 2, left: 1, height: 1, width: 1 };
    must(setQuantity(document, means, [both], 'text'));
    const points = pointsOn(opened, 'Match');
    expect(points.map(({ words, shape }) => [words, shape])).toEqual([
      // 10⁶ / 6900 − 10⁶ / 3200 = −167.6 mired.
      ['168 mired too blue, green by 0.005', 'under'],
      [expect.stringContaining('waiting'), 'waits'],
    ]);
    expect(engine.valueOf(spot('B3'))).toBe('50 mired too blue');
  });

  it('is nothing where nothing was aimed at', () => {
    const points = pointsOn(openBook({ Walk: [['400 lx', '=A1*2']] }), 'Walk');
    expect(agreementOf(points).words).toBe('');
  });
});
