import type { References } from '../measure.ts';
import { colour } from './colour.ts';
import { fixtures } from './fixtures.ts';
import { kits } from './kits.ts';
import { light } from './light.ts';
import { match } from './match.ts';
import { spectra } from './spectra.ts';
import { rigs } from './rig.ts';
import { scales } from './scales.ts';
import { sun } from './sun.ts';

/** The functions whose result is not one equation of numbers, and another way to each. */
export const references: References = {
  ...rigs,
  ...scales,
  ...light,
  ...fixtures,
  ...kits,
  ...match,
  ...colour,
  ...spectra,
  ...sun,
};
