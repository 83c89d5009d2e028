import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CellRole } from '../../../src/grid/contract.ts';

const css = readFileSync(new URL('../../../src/app/tokens.css', import.meta.url), 'utf8');

type Theme = 'light' | 'dark';

/** The pair of colours that a token stands for, from one block of the style sheet. */
function pairs(block: string): ReadonlyMap<string, Readonly<Record<Theme, string>>> {
  const found = block.matchAll(/--([a-z0-9]+):\s*light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g);
  return new Map(
    [...found].map(([, name = '', light = '', dark = '']) => [name, { light, dark }] as const),
  );
}

const [usual = '', strong = ''] = css.split('@media (prefers-contrast: more)');
const tokens = pairs(usual);
const strongTokens = new Map([...tokens, ...pairs(strong)]);

/** The theme beside a meter has one value for each. */
const dim = new Map(
  [
    ...(/\[data-theme='metering'\] \{([^}]*)\}/.exec(css)?.[1] ?? '').matchAll(
      /--([a-z0-9]+): (#[0-9a-f]{6})/g,
    ),
  ].map(([, name = '', value = '']) => [name, value] as const),
);

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

function colour(from: ReadonlyMap<string, Record<Theme, string>>, name: string, theme: Theme) {
  const pair = from.get(name);
  if (!pair) throw new Error(`tokens.css has no pair for --${name}.`);
  return pair[theme];
}

const grounds = ['rail', 'sheet', 'paper', 'lampbg'];
const texts = ['ink', 'mute', 'faint', 'lamp', 'over', 'under', 'ok', 'error'];
const themes = ['light', 'dark'] as const;
const cases = themes.flatMap((theme) =>
  texts.flatMap((text) => grounds.map((ground) => [text, ground, theme] as const)),
);

test('white on black is 21 to 1, as WCAG 2.2 says', () => {
  expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
});

describe('WCAG 2.2, 1.4.3: text stands out at least 4.5 to 1', () => {
  test.each(cases)('%s on %s, %s', (text, ground, theme) => {
    const ratio = contrast(colour(tokens, text, theme), colour(tokens, ground, theme));
    expect(ratio).toBeGreaterThanOrEqual(4.5);
  });
});

describe('WCAG 2.2, 1.4.6: with more contrast wanted, quiet text stands out 7 to 1', () => {
  test.each(
    themes.flatMap((theme) =>
      ['mute', 'faint'].flatMap((text) =>
        ['rail', 'sheet', 'paper'].map((ground) => [text, ground, theme] as const),
      ),
    ),
  )('%s on %s, %s', (text, ground, theme) => {
    const ratio = contrast(colour(strongTokens, text, theme), colour(strongTokens, ground, theme));
    expect(ratio).toBeGreaterThanOrEqual(7);
  });
});

describe('WCAG 2.2, 1.4.11: what bounds a field and what marks the focus stand out 3 to 1', () => {
  test.each(
    themes.flatMap((theme) =>
      ['edge', 'lamp'].flatMap((mark) =>
        ['rail', 'sheet', 'paper'].map((ground) => [mark, ground, theme] as const),
      ),
    ),
  )('%s on %s, %s', (mark, ground, theme) => {
    const ratio = contrast(colour(tokens, mark, theme), colour(tokens, ground, theme));
    expect(ratio).toBeGreaterThanOrEqual(3);
  });
});

describe('beside a meter', () => {
  const value = (name: string) => dim.get(name) ?? `no --${name}`;

  test.each(texts.flatMap((text) => grounds.map((ground) => [text, ground] as const)))(
    '%s on %s stands out 4.5 to 1',
    (text, ground) => {
      expect(contrast(value(text), value(ground))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(
    ['edge', 'lamp'].flatMap((mark) => grounds.slice(0, 3).map((on) => [mark, on] as const)),
  )('%s on %s stands out 3 to 1', (mark, ground) => {
    expect(contrast(value(mark), value(ground))).toBeGreaterThanOrEqual(3);
  });

  test.each([...texts, ...grounds])('--%s shines less than in the dark theme', (name) => {
    expect(luminance(value(name))).toBeLessThan(luminance(colour(tokens, name, 'dark')));
  });
});

describe('WCAG 2.2, 1.4.1 and 1.4.11: what a cell is for is marked by a shape that stands out', () => {
  const roles = readFileSync(
    new URL('../../../src/grid/styles/roles.css', import.meta.url),
    'utf8',
  );
  const markOf = (role: string) =>
    new RegExp(`td\\.${role}::before \\{([^}]*)\\}`).exec(roles)?.[1];
  const kinds: readonly CellRole[] = ['reading', 'choice', 'given', 'answer'];

  test.each(kinds)('%s', (role) => {
    const [, token = ''] = /var\(--(lamp|mute|faint)\)/.exec(markOf(role) ?? '') ?? [];
    for (const theme of themes)
      for (const ground of ['sheet', 'lampbg'])
        expect(
          contrast(colour(tokens, token, theme), colour(tokens, ground, theme)),
        ).toBeGreaterThanOrEqual(3);
  });

  test('no two shapes are alike', () => {
    const shape = (role: string) =>
      markOf(role)?.replace(/(background|border[a-z-]*): ([^;]*)var\(--\w+\)/g, '$1: $2');
    expect(new Set(kinds.map(shape)).size).toBe(kinds.length);
  });
});

test.each(themes)('words on the lamp-lit button can be read, %s', (theme) => {
  const ratio = contrast(colour(tokens, 'lampink', theme), colour(tokens, 'lamp', theme));
  expect(ratio).toBeGreaterThanOrEqual(4.5);
});
