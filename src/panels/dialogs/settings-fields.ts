import type { QuantityName } from '../../../functions/quantities/names.ts';
import { readAs } from '../../../functions/quantities/read.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import type { Settings } from '../../book/types.ts';
import { stopsInWords } from '../page/tolerance.ts';
import { words } from '../../words/words.ts';

/** A choice among a few. */
interface Choice<Key extends keyof Settings> {
  readonly label: string;
  readonly help: string;
  readonly choices: readonly (readonly [value: Settings[Key], words: string])[];
}

export type Picked =
  | 'decimal'
  | 'illuminance'
  | 'length'
  | 'shutter'
  | 'fNumber'
  | 'clock'
  | 'page'
  | 'receptor'
  | 'mainsHertz';

const sizes = ['A4', 'A3', 'Letter', 'Legal', 'Tabloid'] as const;

export const picks: { readonly [Key in Picked]: Choice<Key> } = {
  decimal: {
    label: words.settings.decimal,
    help: words.settings.decimalHelp,
    choices: [
      ['.', words.settings.point],
      [',', words.settings.comma],
    ],
  },
  illuminance: {
    label: words.settings.levels,
    help: words.settings.levelsHelp,
    choices: [
      ['lx', words.settings.lux],
      ['fc', words.settings.footcandles],
    ],
  },
  length: {
    label: words.settings.distances,
    help: words.settings.distancesHelp,
    choices: [
      ['m', words.settings.metres],
      ['ft', words.settings.feet],
    ],
  },
  shutter: {
    label: words.settings.shutter,
    help: words.settings.shutterHelp,
    choices: [
      ['time', words.settings.time],
      ['angle', words.settings.angle],
    ],
  },
  fNumber: {
    label: words.settings.fNumbers,
    help: words.settings.fNumbersHelp,
    choices: [
      ['thirds', words.settings.thirds],
      ['halves', words.settings.halves],
      ['tenths', words.settings.tenths],
      ['decimals', words.settings.decimals],
    ],
  },
  clock: {
    label: words.settings.clock,
    help: words.settings.clockHelp,
    choices: [
      ['24', words.settings.clock24],
      ['12', words.settings.clock12],
    ],
  },
  page: {
    label: words.settings.paper,
    help: words.settings.paperHelp,
    choices: sizes.map((size) => [size, size] as const),
  },
  receptor: {
    label: words.settings.receptor,
    help: words.settings.receptorHelp,
    choices: [
      ['dome', words.settings.receptorDome],
      ['flat', words.settings.receptorFlat],
    ],
  },
  mainsHertz: {
    label: words.settings.mainsHertz,
    help: words.settings.mainsHertzHelp,
    choices: [
      [50, '50 Hz'],
      [60, '60 Hz'],
    ],
  },
};

/** A setting that is written. */
export interface Written {
  readonly label: string;
  readonly help: string;
  /** What cannot be read, and what can, in a sentence. */
  readonly fault: string;
  readonly show: (settings: Settings, writing: WritingSettings) => string;
  /** Undefined for what is refused. */
  readonly read: (text: string, writing: WritingSettings) => Partial<Settings> | undefined;
}

type Numbers =
  | 'tolerance'
  | 'domeConstant'
  | 'flatConstant'
  | 'reflectedConstant'
  | 'mainsVolts'
  | 'continuousShare';

interface Words {
  readonly label: string;
  readonly help: string;
  readonly fault: string;
}

/** A number of a quantity, above zero and up to `most`. */
function number(key: Numbers, quantity: QuantityName, most: number, words: Words): Written {
  return {
    ...words,
    show: (settings, writing) =>
      key === 'tolerance'
        ? stopsInWords(settings[key])
        : writeQuantity(quantity, settings[key], writing).text,
    read(text, writing) {
      const reading = readAs(quantity, text, writing);
      const fits = reading.ok && reading.value > 0 && reading.value <= most;
      return fits ? { [key]: reading.value } : undefined;
    },
  };
}

export const written = {
  tolerance: number('tolerance', 'stops', 10, {
    label: words.settings.tolerance,
    help: words.settings.toleranceHelp,
    fault: words.settings.toleranceWrong,
  }),
  domeConstant: number('domeConstant', 'number', 10_000, {
    label: words.settings.dome,
    help: words.settings.domeHelp,
    fault: words.settings.domeWrong,
  }),
  flatConstant: number('flatConstant', 'number', 10_000, {
    label: words.settings.flat,
    help: words.settings.flatHelp,
    fault: words.settings.flatWrong,
  }),
  reflectedConstant: number('reflectedConstant', 'number', 1_000, {
    label: words.settings.spot,
    help: words.settings.spotHelp,
    fault: words.settings.spotWrong,
  }),
  mainsVolts: number('mainsVolts', 'voltage', 1_000, {
    label: words.settings.mainsVolts,
    help: words.settings.mainsVoltsHelp,
    fault: words.settings.mainsVoltsWrong,
  }),
  continuousShare: number('continuousShare', 'share', 1, {
    label: words.settings.breaker,
    help: words.settings.breakerHelp,
    fault: words.settings.breakerWrong,
  }),
  currency: {
    label: words.settings.currency,
    help: words.settings.currencyHelp,
    fault: words.settings.currencyWrong,
    show: ({ currency }) => currency,
    read(text) {
      const currency = text.trim().toUpperCase();
      return /^[A-Z]{3}$/.test(currency) ? { currency } : undefined;
    },
  },
  zone: {
    label: words.settings.zone,
    help: words.settings.zoneHelp,
    fault: words.settings.zoneWrong,
    show: ({ zone }) => zone,
    read(text) {
      const zone = text.trim();
      return isZone(zone) ? { zone } : undefined;
    },
  },
} satisfies Readonly<Record<string, Written>>;

function isZone(zone: string): boolean {
  try {
    // An offset such as +01:00 is taken by some browsers only, and knows no summer time.
    return /^[A-Z]/i.test(zone) && new Intl.DateTimeFormat('en', { timeZone: zone }) !== null;
  } catch {
    return false;
  }
}
