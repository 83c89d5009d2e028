import { describe, expect, test } from 'vitest';
import { drawnAt, every, made, make, single, texts } from './support.ts';

const inputs = (name: string | null) => ({ fixture: single(name) });

describe('the polar intensity of a fixture', () => {
  test('says peak, beam and field as its data sheet has them', () => {
    // Of the example fixture: 18,000 cd, 20° at a half, 40° at a tenth.
    const { sentences } = made('polar', { inputs: inputs('spot') });
    expect(sentences[0]).toMatch(/^Spot: 18(\.0)? ?kcd at most\.$|^Spot: 18,?000 cd at most\.$/);
    expect(sentences[1]).toBe('Beam (half of the highest) 20°, field (a tenth) 40°.');
  });

  test('a bulb alike all round gives 4π times its candela: 1257 lm, 20.9 lm/W of 60 W', () => {
    expect(made('polar', { inputs: inputs('Bulb') }).sentences[2]).toMatch(
      /^All in all 1.?260 lm from 60 W, 20\.9 lm\/W\.$/,
    );
  });

  test('a matt panel is half as bright at 60°: Lambert’s cosine, a beam of 120°', () => {
    const figure = made('polar', { inputs: inputs('Panel') });
    expect(figure.sentences[1]).toContain('Beam (half of the highest) 120°');
    const [curve = ''] = everyPath(figure);
    // The curve of a cosine is a circle through the lamp: as wide as it is deep.
    const points = [...curve.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    const [xs, ys] = [0, 1].map((axis) => points.map((one) => one[axis] ?? 0));
    const size = (values: number[] = []) => Math.max(...values) - Math.min(...values);
    expect(size(xs) / size(ys)).toBeCloseTo(1, 2);
  });

  test('on a phone the numbers of the rings stand clear of each other', () => {
    const numbers = (width: number) =>
      texts(drawnAt(made('polar', { inputs: inputs('spot') }), width)).filter((text) =>
        /^\d[\d ,]*000$/.test(text),
      );
    expect(numbers(760).length).toBeGreaterThan(numbers(300).length);
    expect(numbers(300).length).toBeGreaterThan(0);
  });

  test('what throws backwards is drawn all round, what does not is half a circle', () => {
    const circles = (name: string) =>
      every(drawnAt(made('polar', { inputs: inputs(name) }))).filter(({ tag }) => tag === 'circle');
    expect(circles('Bulb').length).toBeGreaterThan(3);
    expect(circles('Spot')).toEqual([]);
  });

  test.each([
    [null, 'The cell of the fixture is empty.'],
    ['Lantern', 'The book has no fixture “Lantern”.'],
  ])('says why it cannot be drawn: %s', (name, reason) => {
    expect(make('polar', { inputs: inputs(name) })).toEqual({ reason });
  });

  test.each([320, 760, 2400])('its legend tells the planes apart at %i pixels', (width) => {
    const said = texts(drawnAt(made('polar', { inputs: inputs('Spot') }), width));
    expect(said).toEqual(expect.arrayContaining(['beam 20°', 'field 40°']));
    expect(said.join(' ')).not.toMatch(/NaN|undefined/);
  });
});

const everyPath = (figure: ReturnType<typeof made>) =>
  every(drawnAt(figure))
    .filter(({ attributes }) => attributes['stroke-linejoin'] === 'round')
    .map(({ attributes }) => String(attributes['d']));
