import type { CallSettings } from '../../../../functions/call.ts';
import { exampleFixtures } from '../../../../functions/fixture/exampleFixtures.ts';
import { exampleSpectra } from '../../../../functions/spectrum/exampleSpectra.ts';
import { defaultWriting } from '../../../../functions/quantities/settings.ts';
import { ephemeris } from '../../../../src/engine/ephemeris.ts';

/** A book as it is when nothing was changed. */
export const settings: CallSettings = {
  writing: defaultWriting,
  book: { receptor: 340, continuousShare: 0.8, tolerance: 1 / 3 },
  ephemeris,
  fixtures: exampleFixtures,
  spectra: exampleSpectra,
};
