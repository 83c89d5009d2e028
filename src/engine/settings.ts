import type { CallSettings } from '../../functions/call.ts';
import type { Fixtures } from '../../functions/fixture/fixture.ts';
import type { Spectra } from '../../functions/spectrum/spectra.ts';
import { writingSettings } from '../book/settings.ts';
import type { Settings, Sheet } from '../book/types.ts';
import { ephemerisIn } from './ephemeris.ts';

/** What functions on a sheet take from the book where an argument is left out or has no unit. */
export function callSettings(
  settings: Settings,
  sheet: Sheet | undefined,
  fixtures?: Fixtures,
  spectra?: Spectra,
): CallSettings {
  const { receptor, domeConstant, flatConstant, continuousShare } = settings;
  return {
    writing: writingSettings(settings),
    book: {
      receptor: receptor === 'dome' ? domeConstant : flatConstant,
      continuousShare,
      tolerance: sheet?.properties.tolerance ?? settings.tolerance,
    },
    ephemeris: ephemerisIn(settings.zone),
    ...(fixtures && { fixtures }),
    ...(spectra && { spectra }),
  };
}

/** Settings that results depend on. The others only change how numbers are shown. */
export const calculating: ReadonlySet<keyof Settings> = new Set<keyof Settings>([
  'decimal',
  'illuminance',
  'length',
  'shutter',
  'fNumber',
  'receptor',
  'domeConstant',
  'flatConstant',
  'continuousShare',
  'tolerance',
  'zone',
]);
