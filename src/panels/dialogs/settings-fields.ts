import type { QuantityName } from '../../../functions/quantities/names.ts';
import { readAs } from '../../../functions/quantities/read.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import type { Settings } from '../../book/types.ts';
import { stopsInWords } from '../page/tolerance.ts';

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
    label: 'Decimal sign',
    help: 'Both are read; this one wins where they clash.',
    choices: [
      ['.', 'point: 0.5'],
      [',', 'comma: 0,5'],
    ],
  },
  illuminance: {
    label: 'Light levels',
    help: 'A number without a unit is read in it too.',
    choices: [
      ['lx', 'lux, cd/m²'],
      ['fc', 'footcandles, footlamberts'],
    ],
  },
  length: {
    label: 'Distances',
    help: 'Kept in metres, whichever is shown.',
    choices: [
      ['m', 'metres'],
      ['ft', 'feet and inches'],
    ],
  },
  shutter: {
    label: 'Shutter',
    help: 'An angle needs a frame rate beside it.',
    choices: [
      ['time', 'time: 1/48 s'],
      ['angle', 'angle: 180°'],
    ],
  },
  fNumber: {
    label: 'f-numbers',
    help: 'How exact values are said; marks stay marks.',
    choices: [
      ['thirds', 'marks and thirds'],
      ['halves', 'marks and halves'],
      ['tenths', 'whole stops and tenths'],
      ['decimals', 'decimals'],
    ],
  },
  clock: {
    label: 'Clock',
    help: 'Both ways of writing a time are read.',
    choices: [
      ['24', '24 hours: 14:00'],
      ['12', '12 hours: 2:00 pm'],
    ],
  },
  page: {
    label: 'Paper',
    help: 'What sheets are laid out on for print.',
    choices: sizes.map((size) => [size, size] as const),
  },
  receptor: {
    label: 'Readings that do not say',
    help: 'Taken as metered with this receptor.',
    choices: [
      ['dome', 'dome'],
      ['flat', 'flat'],
    ],
  },
  mainsHertz: {
    label: 'Mains frequency',
    help: 'Lamps on it pulse twice as often.',
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
    label: 'Tolerance, in stops',
    help: 'A reading agrees when it is no further off; a sheet or a cell may say otherwise.',
    fault: 'A tolerance is a number of stops above 0, up to 10: 1/3 or 0.2.',
  }),
  domeConstant: number('domeConstant', 'number', 10_000, {
    label: 'Dome, constant C',
    help: 'ISO 2720 allows 320 to 540. Your meter’s manual says which.',
    fault: 'A constant is a number above 0, such as 340.',
  }),
  flatConstant: number('flatConstant', 'number', 10_000, {
    label: 'Flat, constant C',
    help: 'ISO 2720 allows 240 to 400.',
    fault: 'A constant is a number above 0, such as 250.',
  }),
  reflectedConstant: number('reflectedConstant', 'number', 1_000, {
    label: 'Spot, constant K',
    help: 'ISO 2720 allows 10.6 to 13.4.',
    fault: 'A constant is a number above 0, such as 12.5.',
  }),
  mainsVolts: number('mainsVolts', 'voltage', 1_000, {
    label: 'Mains voltage',
    help: 'The amps of selected loads are worked out at it.',
    fault: 'A mains voltage is above 0 and up to 1000 V, such as 230.',
  }),
  continuousShare: number('continuousShare', 'share', 1, {
    label: 'Share of a breaker for hours',
    help: 'A local rule, 80 % in many places.',
    fault: 'A share is above 0 and up to 100 %, such as 80 %.',
  }),
  currency: {
    label: 'Currency',
    help: 'Three letters behind each amount; nothing is converted.',
    fault: 'A currency is its three letters, such as EUR.',
    show: ({ currency }) => currency,
    read(text) {
      const currency = text.trim().toUpperCase();
      return /^[A-Z]{3}$/.test(currency) ? { currency } : undefined;
    },
  },
  zone: {
    label: 'Time zone',
    help: 'Of the set: what the clock in this book means.',
    fault: 'A time zone is a place of its continent, such as Europe/Lisbon, or Etc/UTC.',
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
