import { describe, expect, test } from 'vitest';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import type { Block, Datum } from '../../../src/figures/figure.ts';
import type { Drawing, Drawn } from '../../../src/figures/kit/element.ts';
import { fileTheme } from '../../../src/figures/kit/theme.ts';
import { svgFile } from '../../../src/figures/kit/file.ts';
import { drawnAt, every, made, make, texts, textSaying, waits, wordsOf } from './support.ts';

const table = (rows: readonly (readonly (string | number | null | Datum)[])[]): Block =>
  rows.map((row) =>
    row.map((value) => (typeof value === 'object' && value !== null ? value : { value })),
  );

/** A bare bulb of 100 cd, three metres up; it is aimed at the floor under it. */
const bulb = table([
  ['Fixture', 'x', 'y', 'z', 'aim x', 'aim y', 'aim z'],
  ['Bulb', 0, 0, 3, 0, 0, 0],
]);
const points = table([
  ['Point', 'x', 'y', 'z', 'azimuth', 'tilt'],
  ['Key mark', 0, 0, 1, 0, 90],
  ['Door', 2, 0, 1, 0, 90],
]);
const flat = { receptor: 'flat' } as const;
const lit = { inputs: { rig: bulb, points }, options: flat };

const paths = (drawn: Drawn, look: (attributes: Drawn['attributes']) => boolean) =>
  every(drawn)
    .filter(({ tag, attributes }) => tag === 'path' && look(attributes))
    .flatMap(({ attributes }) =>
      [...String(attributes['d']).matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(
        ([, x, y]) => [Number(x), Number(y)] as const,
      ),
    );

function draw(figure: ReturnType<typeof made>, width = 800): Drawing {
  return figure.draw(fileTheme, { width, letters: 13 });
}
const handAt = (drawing: Drawing, id: string) => {
  const hand = drawing.held?.hands.find((one) => one.id === id);
  if (!hand) throw new Error(`Nothing is called ${id}.`);
  return hand;
};

describe('the plan in words', () => {
  test('E = I·cos/d²: under the bulb 100/4 = 25 lx, beside it 100·2/8^1.5, 1 1/2 stops less', () => {
    // log2((4 / 8)^1.5) = −1.5 exactly.
    const { sentences } = made('plan', lit);
    expect(sentences[0]).toBe('Key mark reads 25 lx; Door 1 1/2 stops below it.');
    expect(sentences).toContain('Door, at x 2, y 0, 1 m up: 8.84 lx, 1 1/2 stops below the key.');
    expect(sentences).toContain(
      'Bulb, at x 0, y 0, 3 m up, aimed at x 0, y 0, 0 m up: 100 % of the key.',
    );
  });

  test('a dome sees (1 + cos)/2: the door 100·(1 + 0.7071)/2/8 = 10.7 lx', () => {
    const { sentences } = made('plan', { inputs: lit.inputs });
    expect(sentences.find((one) => one.startsWith('Door'))).toContain('10.7 lx');
  });

  test('says how its lines are read, and that the height may be chosen', () => {
    expect(made('plan', lit).sentences[1]).toBe(
      'Lines: whole stops from the key, a flat receptor facing as Key mark does, 1 m up. Hatched: within 1/4 stop of the key.',
    );
    const lying = made('plan', { inputs: lit.inputs, options: { lines: 'floor' } });
    expect(lying.sentences[1]).toContain('a flat receptor facing up, on the floor');
  });

  test('the key is the point that is named, else the one with key in its name', () => {
    const door = { ...lit.inputs, key: table([['door']]) };
    expect(made('plan', { inputs: door, options: flat }).sentences[0]).toBe(
      'Door reads 8.84 lx; Key mark 1 1/2 stops above it.',
    );
    const wrong = { ...lit.inputs, key: table([['Gate']]) };
    expect(make('plan', { inputs: wrong })).toEqual({ reason: 'No point is called “Gate”.' });
  });

  test.each([
    [
      'a rig that waits',
      { rig: table([['Bulb', 0, 0, waits, 0, 0, 0]]), points },
      'waiting for Reading (C3)',
    ],
    [
      'a point that waits',
      { rig: bulb, points: table([['Key', waits, 0, 1]]) },
      'waiting for Reading (C3)',
    ],
    [
      'no point',
      { rig: bulb, points: table([['Point', 'x', 'y', 'z']]) },
      'No point has a name, x, y and z yet.',
    ],
    [
      'no light',
      { rig: table([['Fixture', 'x', 'y', 'z']]), points },
      'No fixture of the rig stands anywhere yet.',
    ],
    [
      'a key in the dark',
      { rig: table([['Spot', 0, 0, 3, 9, 0, 3]]), points: table([['Key', 0, 0, 0]]) },
      'No light of this rig falls on “Key”, so nothing can be told by it.',
    ],
    [
      'a place that is a slip of the pen',
      {
        rig: table([['Bulb', 0, 0, 3, 0, 0, 0]]),
        points: table([
          ['Key', 0, 0, 1],
          ['Far', 9000, 0, 1],
        ]),
      },
      'Places lie more than two kilometres apart: one of them is a slip of the pen.',
    ],
  ])('%s is said', (_what, inputs, reason) => {
    expect(make('plan', { inputs })).toEqual({ reason });
  });

  test('a fixture that the book has not is named', () => {
    const rig = table([['Lantern', 0, 0, 3, 0, 0, 0]]);
    const refused = make('plan', { inputs: { rig, points } });
    expect('reason' in refused && refused.reason).toMatch(/no fixture “Lantern”/);
  });
});

describe('the plan as drawn', () => {
  test('is to scale: two metres between key and door, and the bar says so', () => {
    const drawing = draw(made('plan', lit));
    const { metre = 0 } = drawing.held ?? {};
    const [key, door] = [handAt(drawing, 'point 1'), handAt(drawing, 'point 2')];
    expect(door.x - key.x).toBeCloseTo(2 * metre, 6);
    expect(door.y).toBe(key.y);
    const up = draw(
      made('plan', {
        ...lit,
        inputs: {
          ...lit.inputs,
          points: table([
            ['Key', 0, 0, 1],
            ['Up', 0, 2, 1],
          ]),
        },
      }),
    );
    expect(handAt(up, 'point 0').y - handAt(up, 'point 1').y).toBeCloseTo(
      2 * (up.held?.metre ?? 0),
      6,
    );
  });

  test('the line one stop down is where (4 / (4 + r²))^1.5 = 1/2: 1.533 m from the bulb', () => {
    const drawing = draw(made('plan', lit));
    const { x, y } = handAt(drawing, 'rig 1');
    const root = drawnAt(made('plan', lit));
    const down = paths(
      root,
      ({ stroke, 'stroke-dasharray': dash }) => stroke === fileTheme.mute && dash === '5 3.5',
    );
    const radii = down.map(([px, py]) => Math.hypot(px - x, py - y) / (drawing.held?.metre ?? 1));
    // Straight between places of the grid, which lie 6 pixels apart.
    const near = radii.filter((radius) => radius < 1.8);
    expect(near.length).toBeGreaterThan(40);
    for (const radius of near)
      expect(Math.abs(radius - 2 * Math.sqrt(2 ** (2 / 3) - 1))).toBeLessThan(0.02);
  });

  test('the hatched ground lies within a quarter stop of the key', () => {
    const drawing = draw(made('plan', lit));
    const { x, y } = handAt(drawing, 'rig 1');
    const hatch = paths(drawnAt(made('plan', lit)), (one) => one['stroke-opacity'] === 0.6);
    const edge = 2 * Math.sqrt(2 ** (2 / 12 / 1) - 1);
    const radii = hatch.map(([px, py]) => Math.hypot(px - x, py - y) / (drawing.held?.metre ?? 1));
    expect(radii.length).toBeGreaterThan(20);
    expect(Math.max(...radii)).toBeLessThan(edge + 0.03);
  });

  test('lines are told apart without colour: the key’s heavy, less light dashed', () => {
    const lines = every(drawnAt(made('plan', lit))).filter(
      ({ tag, attributes }) => tag === 'path' && attributes['stroke-linecap'] === 'butt',
    );
    const looks = lines.map(({ attributes }) => [
      attributes['stroke-width'],
      attributes['stroke-dasharray'],
    ]);
    expect(looks).toContainEqual([1, '5 3.5']);
    expect(texts(drawnAt(made('plan', lit)))).toEqual(expect.arrayContaining(['−1', '−2']));
  });

  test('a beam of 20° is drawn 10° to either side of its aim', () => {
    const rig = table([['Spot', 0, 0, 1, 4, 0, 1]]);
    const spot = made('plan', { inputs: { rig, points: table([['Key', 3, 0, 1, 270, 0]]) } });
    const drawing = draw(spot);
    const from = handAt(drawing, 'rig 0');
    const edges = every(drawnAt(spot)).filter(
      ({ tag, attributes }) =>
        tag === 'line' &&
        attributes['x1'] === from.x &&
        attributes['y1'] === from.y &&
        !attributes['stroke-dasharray'],
    );
    const angles = edges.map(
      ({ attributes }) =>
        (Math.atan2(Number(attributes['y2']) - from.y, Number(attributes['x2']) - from.x) * 180) /
        Math.PI,
    );
    expect(angles.map(Math.abs)).toEqual([expect.closeTo(10, 1), expect.closeTo(10, 1)]);
    expect(Math.sign(angles[0] ?? 0)).toBe(-Math.sign(angles[1] ?? 0));
  });

  test('a panel is as wide as it is', () => {
    const rig = table([['Panel', 0, 0, 1.5, 0, 3, 1.5]]);
    const figure = made('plan', { inputs: { rig, points: table([['Key', 0, 2, 1.5, 180, 0]]) } });
    const metre = draw(figure).held?.metre ?? 1;
    const face = paths(drawnAt(figure), ({ fill }) => fill === fileTheme.glow).filter(([, y]) =>
      Number.isFinite(y),
    );
    const lit = every(drawnAt(figure)).filter(
      ({ attributes }) => attributes['stroke-width'] === 2.2,
    );
    expect(lit).toHaveLength(1);
    const xs = paths(lit[0]!, () => true).map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(metre, 1);
    expect(face.length).toBeGreaterThan(0);
  });

  test('in feet and footcandles where the book has them', () => {
    const writing = { ...defaultWriting, length: 'ft', illuminance: 'fc' } as const;
    const figure = made('plan', { ...lit, writing });
    expect(figure.sentences[0]).toContain('2.32 fc');
    expect(texts(drawnAt(figure)).join(' ')).not.toMatch(/ m\b| lx/);
  });

  test.each([340, 700, 1280, 2600])('at %i pixels nothing stands outside', (width) => {
    const drawing = draw(made('plan', lit), width);
    const drawn = every({ tag: 'svg', attributes: {}, children: drawing.children });
    for (const { tag, attributes } of drawn) {
      if (tag !== 'text') continue;
      expect(Number(attributes['x'])).toBeGreaterThanOrEqual(-1);
      expect(Number(attributes['x'])).toBeLessThanOrEqual(width + 1);
    }
    expect(drawing.height).toBeLessThan(width * 1.6 + 200);
    for (const { attributes } of drawn)
      for (const value of Object.values(attributes))
        if (value !== undefined) expect(String(value)).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('where names have no room, fixtures are numbers that the legend tells', () => {
    const root = drawnAt(made('plan', lit), 340);
    expect(textSaying(root, 'Bulb')).toBeDefined();
    const bold = every(root).filter((one) => one.attributes['font-weight'] === 700);
    expect(bold.filter((one) => wordsOf(one) === '1')).toHaveLength(2);
  });

  test('makes a file without a colour of the page', () => {
    const figure = made('plan', lit);
    const file = svgFile(draw(figure), 'Plan', figure.sentences);
    expect(file).not.toContain('var(');
    expect(file).toContain('<desc>Key mark reads 25 lx');
  });
});

describe('hands', () => {
  const formula = { value: 0, at: 'B7', formula: true } as const;

  test('every fixture, aim and point has one that knows its cells', () => {
    const { hands = [] } = made('plan', lit);
    expect(hands.map(({ id, name }) => [id, name])).toEqual([
      ['rig 1', 'Bulb'],
      ['aim 1', 'Aim of Bulb'],
      ['point 1', 'Key mark'],
      ['point 2', 'Door'],
    ]);
    expect(hands[1]?.cells).toEqual([
      { input: 'rig', row: 1, column: 4, words: 'aim x' },
      { input: 'rig', row: 1, column: 5, words: 'aim y' },
    ]);
  });

  test('what a board faces has one too: turned away from the key, it gives the key less', () => {
    const blank = null;
    const rig = table([
      ['Bulb', 0, 0, 1, 0, 2, 1, blank, blank, blank, 1, 1, blank, blank, 0.8, 0.5, 0, 1],
    ]);
    const figure = made('plan', { inputs: { rig, points: table([['Key', 1, 0, 1, 0, 0]]) } });
    const towards = figure.hands?.find(({ id }) => id === 'towards 0');
    expect(towards).toMatchObject({
      name: 'Frame or board of Bulb faces',
      at: [0.5, 0],
      cells: [
        { input: 'rig', row: 0, column: 15, words: 'towards x' },
        { input: 'rig', row: 0, column: 16, words: 'towards y' },
      ],
    });
    const drawing = draw(figure);
    const { metre = 0 } = drawing.held ?? {};
    expect(handAt(drawing, 'towards 0').x - handAt(drawing, 'rig 0').x).toBeCloseTo(metre / 2, 6);
    expect(texts(drawnAt(figure))).toContain('what a frame or board faces');
    expect(figure.sentences.join(' ')).toContain('its frame or board towards x 0.5, y 0, 1 m up');
    const lux = (one: ReturnType<typeof figure.moved>) =>
      Number(
        /reads ([\d.]+) lx/.exec('reason' in one ? one.reason : (one.sentences[0] ?? ''))?.[1],
      );
    expect(lux(figure.moved('towards 0', [-1.5, 0.5]))).toBeLessThan(lux(figure));
    expect(figure.moved('towards 0', [0, 4])).toMatchObject({
      reason: expect.stringContaining('shows it its back') as string,
    });
  });

  test('moved to where the door is, the key point reads what the door read', () => {
    const moved = made('plan', lit).moved('point 1', [2, 0]);
    expect('reason' in moved ? moved.reason : moved.sentences[0]).toBe(
      'Key mark reads 8.84 lx; Door the same.',
    );
  });

  test('while one is moved the frame stays and less is worked out', () => {
    const before = made('plan', lit);
    const moved = before.moved('rig 1', [3.5, 1]);
    if ('reason' in moved) throw new Error(moved.reason);
    const [rest, held] = [draw(before), draw(moved)];
    expect(held.held?.metre).toBe(rest.held?.metre);
    expect(handAt(held, 'point 1')).toEqual(handAt(rest, 'point 1'));
    expect(handAt(held, 'rig 1').x - handAt(rest, 'rig 1').x).toBeCloseTo(
      3.5 * (rest.held?.metre ?? 0),
      6,
    );
    const vertices = (drawing: Drawing) =>
      paths(
        { tag: 'svg', attributes: {}, children: drawing.children },
        (one) => one['stroke-linecap'] === 'butt',
      ).length;
    const still = before.moved('rig 1', [0, 0]);
    if ('reason' in still) throw new Error(still.reason);
    expect(vertices(draw(still))).toBeLessThan(vertices(rest) / 2);
  });

  test('what a formula works out stays', () => {
    const rig = table([['Bulb', formula, 0, 3, 0, 0, 0]]);
    const figure = made('plan', { inputs: { rig, points }, options: flat });
    expect(figure.hands?.[0]?.cells[0]).toMatchObject({ formula: 'B7' });
    const moved = figure.moved('rig 0', [2, 0]);
    expect('reason' in moved ? moved.reason : moved.sentences[0]).toBe(figure.sentences[0]);
  });
});

describe('the section', () => {
  test('shows heights: the bulb three metres over the floor', () => {
    const drawing = draw(made('section', lit));
    const { metre = 0 } = drawing.held ?? {};
    const [lamp, aim] = [handAt(drawing, 'rig 1'), handAt(drawing, 'aim 1')];
    expect(aim.y - lamp.y).toBeCloseTo(3 * metre, 6);
  });

  test('moves heights, seen from the front x and z, from the side y and z', () => {
    const cells = (options: Record<string, string>) =>
      made('section', { ...lit, options }).hands?.[0]?.cells.map(({ words }) => words);
    expect(cells({})).toEqual(['x', 'z']);
    expect(cells({ from: 'side' })).toEqual(['y', 'z']);
  });

  test('lowered from 2 m over the mark to 1 m, the bulb gives two stops more', () => {
    const lower = made('section', lit).moved('rig 1', [0, 2]);
    expect('reason' in lower ? lower.reason : lower.sentences[0]).toMatch(/^Key mark reads 100 lx/);
  });
});
