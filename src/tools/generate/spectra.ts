import { sampleSpectra } from '../../files/spectra/samples.ts';

/** Files of spectra to try things with: public, so that they can be fetched and read by others. */
export function generate() {
  return sampleSpectra.map(({ file, text }) => ({ path: `public/spectra/${file}`, text }));
}
