import { element, markup, type Drawing } from './element.ts';
import { fileTheme } from './theme.ts';
import { lettering } from './words.ts';

const margin = 16;

/**
 * A drawing as a file of its own: title and description inside, every colour written out, letters
 * that any machine has. Opens anywhere and needs nothing.
 */
export function svgFile(drawing: Drawing, title: string, sentences: readonly string[]): string {
  const head = 30;
  const [width, height] = [drawing.width + 2 * margin, drawing.height + head + 2 * margin];
  const { ink, sheet, font } = fileTheme;
  const root = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      role: 'img',
      'font-family': font,
    },
    element('title', {}, title),
    element('desc', {}, sentences.join(' ')),
    element('rect', { width, height, fill: sheet }),
    lettering(margin, margin + 16, title, { fill: ink, size: 17, weight: 600 }),
    element('g', { transform: `translate(${margin} ${margin + head})` }, ...drawing.children),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${markup(root)}\n`;
}
