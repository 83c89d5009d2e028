import { element, rounded, type Drawn } from './element.ts';
import type { Theme } from './theme.ts';

/** The shapes of verdicts, and a dot for what nothing was wanted of. */
export type Sign = 'over' | 'under' | 'agrees' | 'waits' | 'clips' | 'dot';

/** Each differs in outline, drawn around 0, 0 in a square of 12. Colour only supports. */
const outlines: Readonly<Record<Sign, { readonly d: string; readonly line?: number }>> = {
  over: { d: 'M0-5 5.4 4.2H-5.4Z' },
  under: { d: 'M0 5 5.4-4.2H-5.4Z' },
  agrees: { d: 'M-4.8-2.2H4.8M-4.8 2.2H4.8', line: 2.2 },
  waits: { d: 'M-3.4 0H3.4', line: 2 },
  clips: { d: 'M-5.4-5.4H5.4M0-2.8 5 5H-5Z', line: 1.4 },
  dot: { d: 'M-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0Z' },
};

const paints: Readonly<Record<Sign, keyof Theme>> = {
  over: 'over',
  under: 'under',
  agrees: 'ok',
  waits: 'faint',
  clips: 'over',
  dot: 'ink',
};

export const paintOf = (sign: Sign, theme: Theme): string => theme[paints[sign]];

/** A sign with its middle at a place; a hair of the ground around it sets it off from lines. */
export function signAt(x: number, y: number, sign: Sign, theme: Theme, scale = 1): Drawn {
  const { d, line } = outlines[sign];
  const paint = paintOf(sign, theme);
  const closed = d.endsWith('Z');
  const path = (attributes: Drawn['attributes']) => element('path', { d, ...attributes });
  return element(
    'g',
    {
      transform: `translate(${rounded(x)} ${rounded(y)}) scale(${rounded(scale)})`,
    },
    path({
      fill: closed ? theme.sheet : 'none',
      stroke: theme.sheet,
      'stroke-width': (line ?? 0) + 4,
      'stroke-linejoin': 'round',
    }),
    path({
      fill: closed ? paint : 'none',
      ...(line !== undefined && { stroke: paint, 'stroke-width': line }),
    }),
  );
}
