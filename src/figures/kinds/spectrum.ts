import { defineFigure } from '../figure.ts';
import { describeSpectrum } from './spectrum/describe.ts';
import { drawSpectrum } from './spectrum/draw.ts';
import { inputs, options } from './spectrum/given.ts';
import { readSpectrum } from './spectrum/read.ts';
import { words } from '../../words/words.ts';

/** A light by its wavelengths, with the light that it stands for; or what a filter lets through. */
export const spectrum = defineFigure({
  kind: 'spectrum',
  name: words.spectrumFigure.title,
  summary: words.spectrumFigure.what,
  inputs,
  options,
  read: readSpectrum,
  describe: describeSpectrum,
  draw: drawSpectrum,
});
