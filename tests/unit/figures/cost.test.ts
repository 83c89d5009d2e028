import { describe, expect, it } from 'vitest';
import { placed } from '../../../src/figures/kinds/cost/labels.ts';
import { column, drawnAt, every, made, make, textSaying, texts, waits } from './support.ts';

const options = (rows: readonly (readonly [string, number | null, number | null])[]) => ({
  inputs: {
    options: column(rows.map(([name]) => name)),
    light: column(
      rows.map(([, off]) => off ?? waits),
      'stops',
    ),
    cost: column(
      rows.map(([, , cost]) => cost ?? waits),
      'money',
    ),
  },
});

const four = options([
  ['Two panels', 0.8, 275],
  ['One panel', 1.4, 138],
  ['Fresnel', -0.4, 60],
  ['Tubes', 0.1, 362],
]);

describe('light against cost', () => {
  it('says the cheapest that is enough, and what is dearer and no brighter', () => {
    expect(made('cost', four).sentences).toEqual([
      'The cheapest that reaches the wanted light is One panel, at 138.00 EUR (1.4 stops over).',
      'Two panels and Tubes are dearer than another that is as bright.',
      '4 options.',
    ]);
  });

  it('what is short by less than the tolerance is enough', () => {
    const [first] = made('cost', { ...four, tolerance: 1 / 2 }).sentences;
    expect(first).toContain('is Fresnel, at 60.00 EUR');
  });

  it('says the brightest where none reaches the wanted light', () => {
    const dim = options([
      ['Tubes', -2, 100],
      ['Lantern', -1, 50],
    ]);
    expect(made('cost', dim).sentences).toEqual([
      'None that fits reaches the wanted light; the brightest is Lantern (1 stop under).',
      'Tubes is dearer than another that is as bright.',
      '2 options.',
    ]);
  });

  it('two of one price and light stand beside each other, neither passed over', () => {
    const twins = options([
      ['East', 0, 80],
      ['West', 0, 80],
    ]);
    expect(made('cost', twins).sentences).toHaveLength(2);
  });

  it('what does not fit is crossed out and no match for the others', () => {
    const fits = column(['yes', 'yes', 'no', '']);
    const figure = made('cost', { inputs: { ...four.inputs, fits } });
    expect(figure.sentences).toContain('Fresnel does not fit.');
    expect(texts(drawnAt(figure))).toContain('does not fit');
    const all = column(['no', 'no', 'no', 'no']);
    const [first] = made('cost', { inputs: { ...four.inputs, fits: all } }).sentences;
    expect(first).toMatch(/^None that fits reaches/);
  });

  it('a dearer one stands to the right, a brighter one higher', () => {
    const drawn = drawnAt(made('cost', four));
    // The last two explain the signs.
    const dots = every(drawn)
      .filter(({ tag }) => tag === 'circle')
      .slice(0, 4);
    const at = dots.map(({ attributes }) => [Number(attributes['cx']), Number(attributes['cy'])]);
    // From the cheapest on: Fresnel, One panel, Two panels, Tubes.
    expect(at.map(([x]) => x)).toEqual(at.map(([x]) => x).toSorted((a, b) => a! - b!));
    expect(at[1]![1]).toBeLessThan(at[2]![1]!);
    expect(at[0]![1]).toBeGreaterThan(at[3]![1]!);
    expect(dots.map(({ attributes }) => attributes['fill'] === '#ffffff')).toEqual([
      false,
      false,
      true,
      true,
    ]);
  });

  it.each([320, 800, 1600])('names every option at %i pixels, inside the picture', (width) => {
    const drawn = drawnAt(made('cost', four), width);
    for (const name of ['Two panels', 'One panel', 'Fresnel', 'Tubes']) {
      const { attributes } = textSaying(drawn, name);
      expect(Number(attributes['x'])).toBeGreaterThan(0);
      expect(Number(attributes['x'])).toBeLessThan(width);
    }
    expect(texts(drawn)).toContain('wanted');
  });

  it('rows that wait, blank rows and captions are left out; without any other there is a sentence', () => {
    const some = options([
      ['Waits', null, 20],
      ['There', 0, 20],
    ]);
    expect(made('cost', some).sentences.at(-1)).toBe('One option.');
    expect(make('cost', options([['Waits', null, null]]))).toEqual({
      reason: 'No row has both light and cost yet.',
    });
  });
});

describe('names beside dots', () => {
  it('two at one place stand below one another', () => {
    const box = { left: 0, right: 400, top: 0, bottom: 200 };
    const [first, second] = placed(
      [
        { text: 'One', x: 100, y: 100 },
        { text: 'Another', x: 100, y: 100 },
      ],
      { box, letters: 12, gap: 10 },
    );
    expect(first?.y !== second?.y || first?.anchor !== second?.anchor).toBe(true);
  });

  it('at the right edge they stand to the left', () => {
    const box = { left: 0, right: 400, top: 0, bottom: 200 };
    const [label] = placed([{ text: 'A long name here', x: 390, y: 100 }], {
      ...{ box, letters: 12, gap: 10 },
    });
    expect(label?.anchor).toBe('end');
    expect(label?.text).toBe('A long name here');
  });
});
