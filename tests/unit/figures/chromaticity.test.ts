import { describe, expect, it } from 'vitest';
import { screenColour } from '../../../src/figures/kinds/chromaticity/screenColour.ts';
import {
  isotherm,
  planckianLocus,
  spectralLocus,
  toleranceBox,
  wavelengthXY,
} from '../../../src/figures/kinds/chromaticity/diagram.ts';
import { clipped } from '../../../src/figures/kit/clipped.ts';
import { column, drawnAt, every, make, made, single, textSaying, texts } from './support.ts';

const names = ['Window', 'Key', 'Tubes'];
const inputs = {
  names: column(names),
  x: column([0.3071, 0.4234, 0.3828], 'chromaticity'),
  y: column([0.3211, 0.399, 0.4004], 'chromaticity'),
  thenX: column([0.4208, 0.4234, 0.4336], 'chromaticity'),
  thenY: column([0.4027, 0.399, 0.4079], 'chromaticity'),
  targetX: single(0.4234, 'chromaticity'),
  targetY: single(0.399, 'chromaticity'),
};

const dots = (drawn: ReturnType<typeof drawnAt>) =>
  every(drawn).filter(({ tag }) => tag === 'circle');
/** Without the one that explains the sign. */
const marks = (drawn: ReturnType<typeof drawnAt>) =>
  dots(drawn)
    .slice(0, -1)
    .map(({ attributes }) => [Number(attributes['cx']), Number(attributes['cy'])] as const);

describe('sources in a chromaticity diagram', () => {
  it('says how many agree with the white, and of each how far it is off before and after', () => {
    expect(made('chromaticity', { inputs }).sentences).toEqual([
      '1 of 3 sources agrees with the white wanted, 3200 K, Duv 0.000.',
      'Window, 6899 K, Duv +0.002: 168 mired too blue; corrected agrees.',
      'Key, 3200 K, Duv 0.000: agrees.',
      'Tubes, 4100 K, Duv +0.010: 69 mired too blue, green by 0.010; corrected 11 mired too warm.',
      'Tints are approximations on a screen, as seen from the white wanted.',
    ]);
  });

  it('tolerances of its own decide what agrees', () => {
    const wide = { ...inputs, mired: single(200, 'mired'), duv: single(0.02, 'duv') };
    expect(made('chromaticity', { inputs: wide }).sentences[0]).toMatch(/^3 of 3 sources agree /);
  });

  it('without a white it says what colours there are', () => {
    const { names, x, y } = inputs;
    const figure = made('chromaticity', { inputs: { names, x, y } });
    expect(figure.sentences.slice(0, 2)).toEqual(['3 sources.', 'Window: 6899 K, Duv +0.002.']);
    expect(texts(drawnAt(figure))).not.toContain('white wanted');
  });

  it('a saturated light has no colour temperature, and is said by x and y', () => {
    const red = {
      names: column(['Sign']),
      x: column([0.65], 'chromaticity'),
      y: column([0.32], 'chromaticity'),
    };
    expect(made('chromaticity', { inputs: red }).sentences[1]).toBe(
      'Sign: x 0.650, y 0.320, too far from white for a colour temperature.',
    );
  });

  it('what is no colour, nothing at all, and too much of it are sentences', () => {
    const one = (x: number, y: number) => ({
      names: column(['Odd']),
      x: column([x], 'chromaticity'),
      y: column([y], 'chromaticity'),
    });
    expect(make('chromaticity', { inputs: one(0.7, 0.7) })).toEqual({
      reason: 'The x and y of Odd are no colour of light.',
    });
    const empty = { names: column([null]), x: column([null]), y: column([null]) };
    expect(make('chromaticity', { inputs: empty })).toEqual({
      reason: 'No row has both x and y yet.',
    });
    const many = Array.from({ length: 25 }, () => 0.33);
    const all = { names: column(many.map(() => 'One')), x: column(many), y: column(many) };
    expect(make('chromaticity', { inputs: all })).toEqual({
      reason: 'A figure shows up to 24 sources; here are 25.',
    });
  });

  it.each(['uv', 'xy'])('in %s the bluer stands to the left and lower, all inside', (diagram) => {
    const drawn = drawnAt(made('chromaticity', { inputs, options: { diagram } }));
    const [window, key, tubes] = marks(drawn);
    expect(window![0]).toBeLessThan(tubes![0]);
    expect(tubes![0]).toBeLessThan(key![0]);
    expect(window![1]).toBeGreaterThan(key![1]);
    for (const [x, y] of [window!, key!, tubes!]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(800);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(Number(drawn.attributes['height']));
    }
  });

  it('one scale both ways: a step as long in u′ and in v′ is as long on paper', () => {
    // u′ = 0.2, v′ = 0.45 and 0.02 further either way, turned back into x, y by CIE 15.
    const xy = (u: number, v: number) => {
      const sum = 6 * u - 16 * v + 12;
      return [(9 * u) / sum, (4 * v) / sum] as const;
    };
    const three = [xy(0.2, 0.45), xy(0.22, 0.45), xy(0.2, 0.47)];
    const drawn = drawnAt(
      made('chromaticity', {
        inputs: {
          names: column(['a', 'b', 'c']),
          x: column(three.map(([x]) => x)),
          y: column(three.map(([, y]) => y)),
        },
      }),
    );
    const [a, b, c] = marks(drawn);
    expect(b![0] - a![0]).toBeCloseTo(a![1] - c![1], 6);
    expect(b![1]).toBeCloseTo(a![1], 6);
    expect(c![0]).toBeCloseTo(a![0], 6);
  });

  it.each([320, 800, 1600])('names every source at %i pixels, none over another', (width) => {
    const drawn = drawnAt(made('chromaticity', { inputs }), width);
    const boxes = [...names, 'white wanted'].map((name) => {
      const { attributes } = textSaying(drawn, name);
      return { x: Number(attributes['x']), y: Number(attributes['y']), size: name.length * 6 };
    });
    for (const [index, one] of boxes.entries())
      for (const other of boxes.slice(index + 1))
        expect(
          Math.abs(one.y - other.y) >= 11 ||
            Math.abs(one.x - other.x) >= (one.size + other.size) / 2,
        ).toBe(true);
    expect(texts(drawn)).toContain('Tints are approximations on a screen.');
    expect(texts(drawn)).toContain('corrected');
  });

  it('on black-and-white paper before and after differ in shape, and an arrow joins them', () => {
    const drawn = drawnAt(made('chromaticity', { inputs }));
    const closed = every(drawn).filter(
      ({ tag, attributes }) => tag === 'path' && String(attributes['d']).endsWith('Z'),
    );
    // What agrees; two diamonds with two heads of arrows; the diamond that explains the sign.
    expect(closed).toHaveLength(6);
    expect(dots(drawn)).toHaveLength(4);
  });

  it('the whole diagram has its wavelengths and its scale from nothing', () => {
    const drawn = drawnAt(made('chromaticity', { inputs, options: { extent: 'whole' } }));
    expect(texts(drawn)).toEqual(expect.arrayContaining(['480', '520', '600', '0.0']));
    const close = drawnAt(made('chromaticity', { inputs }));
    expect(texts(close)).not.toContain('480');
    expect(texts(close)).toContain('3200 K');
  });
});

describe('the lines of the diagram', () => {
  it('light of 520 nm lies where CIE 15 prints it', () => {
    const { x, y } = wavelengthXY(520);
    expect(x).toBeCloseTo(0.0743, 3);
    expect(y).toBeCloseTo(0.8338, 3);
    expect(spectralLocus[0]).toEqual(spectralLocus.at(-1));
  });

  it('the Planckian locus passes illuminant A, an isotherm crosses it square in u, v', () => {
    const distances = planckianLocus().map(({ x, y }) => Math.hypot(x - 0.44758, y - 0.40745));
    expect(Math.min(...distances)).toBeLessThan(0.01);
    const [low, mid, high] = isotherm(3200, 0.02).map(({ x, y }) => {
      const sum = -2 * x + 12 * y + 3;
      return [(4 * x) / sum, (6 * y) / sum] as const;
    });
    expect(Math.hypot(high![0] - low![0], high![1] - low![1])).toBeCloseTo(0.04, 9);
    expect((low![0] + high![0]) / 2).toBeCloseTo(mid![0], 9);
  });

  it('what agrees has the white in its middle', () => {
    const box = toleranceBox({ kelvin: 3200, duv: 0 }, { mired: 10, duv: 0.003 });
    const x = box.map((at) => at.x);
    expect(Math.min(...x)).toBeLessThan(0.4234);
    expect(Math.max(...x)).toBeGreaterThan(0.4234);
  });
});

describe('about what a colour looks like', () => {
  it('the white that one is adapted to is white, whichever it is', () => {
    for (const white of [
      { x: 0.3127, y: 0.329 },
      { x: 0.4476, y: 0.4074 },
    ]) {
      const channels = screenColour(white, white).match(/[0-9a-f]{2}/g) ?? [];
      expect(channels).toHaveLength(3);
      for (const channel of channels) expect(parseInt(channel, 16)).toBeGreaterThan(250);
    }
  });

  it('daylight is blue to who is adapted to tungsten, and tungsten orange the other way', () => {
    const [day, lamp] = [
      { x: 0.3127, y: 0.329 },
      { x: 0.4476, y: 0.4074 },
    ];
    const parts = (colour: string) => [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16));
    const [r = 0, , b = 0] = parts(screenColour(day, lamp));
    expect(b).toBeGreaterThan(r);
    const [red = 0, green = 0, blue = 0] = parts(screenColour(lamp, day));
    expect(red).toBeGreaterThan(green);
    expect(green).toBeGreaterThan(blue);
  });

  it('the red of the screen is its red (IEC 61966-2-1)', () => {
    expect(screenColour({ x: 0.64, y: 0.33 })).toMatch(/^#ff0[0-9a-f]0[0-9a-f]$/);
  });
});

describe('a line cut at the edges of a box', () => {
  const box = { left: 0, right: 10, top: 0, bottom: 10 };

  it('goes on in one piece inside, and in two where it leaves and comes back', () => {
    expect(
      clipped(
        [
          [1, 1],
          [5, 5],
          [9, 1],
        ],
        box,
      ),
    ).toBe('M1 1L5 5L9 1');
    expect(
      clipped(
        [
          [5, 5],
          [5, 15],
          [8, 15],
          [8, 5],
        ],
        box,
      ),
    ).toBe('M5 5L5 10M8 10L8 5');
  });

  it('crosses from edge to edge, or is not there', () => {
    expect(
      clipped(
        [
          [-5, 5],
          [15, 5],
        ],
        box,
      ),
    ).toBe('M0 5L10 5');
    expect(
      clipped(
        [
          [-5, 15],
          [15, 15],
        ],
        box,
      ),
    ).toBe('');
    expect(
      clipped(
        [
          [-5, -1],
          [-1, 20],
        ],
        box,
      ),
    ).toBe('');
  });
});
