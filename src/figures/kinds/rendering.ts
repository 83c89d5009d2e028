import { defineFigure } from '../figure.ts';
import { describeRendering } from './rendering/describe.ts';
import { drawRendering } from './rendering/draw.ts';
import { readRendering } from './rendering/read.ts';
import { inputs, options } from './spectrum/given.ts';
import { words } from '../../words/words.ts';

/** How true each of the fourteen test colours looks under a light: R1 to R14, with their mean Ra. */
export const rendering = defineFigure({
  kind: 'rendering',
  name: words.renderingFigure.title,
  summary: words.renderingFigure.what,
  inputs,
  options,
  read: readRendering,
  describe: describeRendering,
  draw: drawRendering,
});
