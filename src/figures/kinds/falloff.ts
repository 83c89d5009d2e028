import { defineFigure } from '../figure.ts';
import { describeFalloff } from './falloff/describe.ts';
import { drawFalloff } from './falloff/draw.ts';
import { reaches, readFalloff } from './falloff/read.ts';

/** How the light of one source falls off with distance, and how deep it may be called even. */
export const falloff = defineFigure({
  kind: 'falloff',
  name: 'Falloff with distance',
  summary: 'What a source gives nearer and farther, and the depth that stays within tolerance.',
  inputs: [
    {
      name: 'lux',
      words: 'Light at the mark',
      help: 'What this source alone gives there.',
      shape: 'single',
      quantities: ['illuminance'],
      captions: [/own/i, /alone/i, /light|lux/i],
    },
    {
      name: 'mark',
      words: 'Distance of the mark',
      help: 'From the face or the lamp to where the light was metered.',
      shape: 'single',
      quantities: ['length'],
      captions: [/stand/i, /distance|away/i],
    },
    {
      name: 'width',
      words: 'Width of the lit face',
      help: 'Width and height together draw a matt, evenly lit face beside the inverse square.',
      shape: 'single',
      quantities: ['length'],
      optional: true,
      captions: [/width|wide/i],
    },
    {
      name: 'height',
      words: 'Height of the lit face',
      help: '',
      shape: 'single',
      quantities: ['length'],
      optional: true,
      captions: [/height|high/i],
    },
  ],
  options: [{ name: 'reach', words: 'Shows', choices: reaches }],
  read: readFalloff,
  describe: describeFalloff,
  draw: drawFalloff,
});
