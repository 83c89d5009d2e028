import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figureKinds } from '../../../src/figures/kinds.ts';
import { element, markup } from '../../../src/figures/kit/element.ts';
import { svgFile } from '../../../src/figures/kit/file.ts';
import { colours, fileTheme, pageTheme } from '../../../src/figures/kit/theme.ts';
import { column, made, single } from './support.ts';

const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"' };
const tag = /^<(\/?)([a-z]\w*)((?: [a-z][\w-]*(?::\w+)?="[^"<]*")*)(\/?)>/;

/** Reads well-formed XML of elements and text, and throws at anything else. */
function parse(text: string): { readonly tags: readonly string[]; readonly words: string } {
  const tags: string[] = [];
  const open: string[] = [];
  let words = '';
  let rest = text.replace(/^<\?xml version="1.0" encoding="UTF-8"\?>\n/, '').trimEnd();
  while (rest !== '') {
    const [whole = '', end, name = '', , empty] = tag.exec(rest) ?? /^[^<]+/.exec(rest) ?? [];
    if (whole === '') throw new Error(`Not well-formed at ${rest.slice(0, 60)}`);
    if (name === '') {
      // A bare & or an entity that XML does not know by itself has no replacement here.
      words += whole.replace(/&(\w*;?)/g, (_, entity: string) => {
        const sign = entities[entity.slice(0, -1)];
        if (sign === undefined) throw new Error(`&${entity} is no entity.`);
        return sign;
      });
      if (open.length === 0) throw new Error(`Text outside: ${whole}`);
    } else if (end === '/') {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing.`);
    } else {
      tags.push(name);
      if (empty !== '/') open.push(name);
    }
    rest = rest.slice(whole.length);
  }
  if (open.length > 0) throw new Error(`${open.join()} stays open.`);

  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(text)) throw new Error('A refused sign.');
  return { tags, words };
}

const nasty = 'Fill <side> & "shade" \u0001]]> ⅔';

describe('a figure as a file', () => {
  const figure = made('ladder', {
    inputs: { points: column([nasty, 'Key']), read: column([-2, 0], 'stops') },
  });
  const file = svgFile(
    figure.draw(fileTheme, { width: 700, letters: 13 }),
    nasty,
    figure.sentences,
  );

  test('is well-formed whatever its points are called, and carries names and numbers', () => {
    const { tags, words } = parse(file);
    expect(tags.slice(0, 3)).toEqual(['svg', 'title', 'desc']);
    expect(words).toContain('Fill <side> & "shade" ]]> ⅔');
    expect(words).toContain('2 stops below key');
    expect(words).toContain('−2');
  });

  test('needs nothing from outside: no styles, no variables, no addresses', () => {
    expect(file).not.toMatch(/style=|var\(|<script|<image|href|url\(/);
    expect(file.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
  });

  test('is drawn in the light colours of the page', () => {
    const css = readFileSync(new URL('../../../src/app/tokens.css', import.meta.url), 'utf8');
    const light = (name: string) =>
      new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}),`).exec(css)?.[1];
    // The ground of a file is white, for paper and reports.
    for (const name of colours.filter((one) => one !== 'sheet')) {
      expect(light(name), name).toBeDefined();
      expect(fileTheme[name], name).toBe(light(name));
    }
  });
});

test('on the page every colour is a token, so that themes and print change it', () => {
  const figure = made('falloff', {
    inputs: { lux: single(100, 'illuminance'), mark: single(2, 'length') },
  });
  const { children } = figure.draw(pageTheme, { width: 700, letters: 13 });
  const text = children.map(markup).join('');
  for (const [, paint] of text.matchAll(/(?:fill|stroke)="([^"]+)"/g))
    expect(paint).toMatch(/^(none|var\(--\w+\))$/);
});

test('markup escapes text and attributes', () => {
  expect(markup(element('text', { x: 1.23456, class: 'a"b' }, '1 < 2 & 3'))).toBe(
    '<text x="1.23" class="a&quot;b">1 &lt; 2 &amp; 3</text>',
  );
});

test('every kind has a name of its own, and every input and option says what it is', () => {
  expect(new Set(figureKinds.map(({ kind }) => kind)).size).toBe(figureKinds.length);
  for (const { inputs, options } of figureKinds) {
    // What a figure is drawn from is asked for: cells, or what lies on a shelf of the book.
    const asked = inputs.some(({ optional }) => !optional) || options.some(({ shelf }) => shelf);
    expect(asked).toBe(true);
    expect(new Set(inputs.map(({ name }) => name)).size).toBe(inputs.length);
    for (const { choices, shelf } of options) if (!shelf) expect(choices.length).toBeGreaterThan(1);
  }
});
