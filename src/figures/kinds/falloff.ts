import { defineFigure } from '../figure.ts';
import { describeFalloff } from './falloff/describe.ts';
import { drawFalloff } from './falloff/draw.ts';
import { reaches, readFalloff } from './falloff/read.ts';
import { words } from '../../words/words.ts';

/** How the light of one source falls off with distance, and how deep it may be called even. */
export const falloff = defineFigure({
  kind: 'falloff',
  name: words.falloff.title,
  summary: words.falloff.what,
  inputs: [
    {
      name: 'lux',
      words: words.falloff.light,
      help: words.falloff.lightHelp,
      shape: 'single',
      quantities: ['illuminance'],
      optional: true,
      shown: true,
      captions: [/own/i, /alone/i, /light|lux/i],
    },
    {
      name: 'mark',
      words: words.falloff.distance,
      help: words.falloff.distanceHelp,
      shape: 'single',
      quantities: ['length'],
      captions: [/stand/i, /distance|away/i],
    },
    {
      name: 'fixture',
      words: words.falloff.fixture,
      help: words.falloff.fixtureHelp,
      shape: 'single',
      optional: true,
      shown: true,
      captions: [/^fixture/i],
    },
    {
      name: 'width',
      words: words.falloff.width,
      help: words.falloff.widthHelp,
      shape: 'single',
      quantities: ['length'],
      optional: true,
      captions: [/width|wide/i],
    },
    {
      name: 'height',
      words: words.falloff.height,
      help: '',
      shape: 'single',
      quantities: ['length'],
      optional: true,
      captions: [/height|high/i],
    },
  ],
  options: [{ name: 'reach', words: words.falloff.shows, choices: reaches }],
  read: readFalloff,
  describe: describeFalloff,
  draw: drawFalloff,
});
