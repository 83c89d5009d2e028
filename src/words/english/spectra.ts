/** Files of spectra, and the list of the book’s spectra. */
export const spectra = {
  aWavelength: 'a wavelength',
  aPower: 'a value',
  empty: (what: string) => `Here ${what} is missing.`,
  noTable: 'There is no table of wavelengths and values in it.',
  moreCells: (given: number, wanted: number) =>
    `The line has ${String(given)} columns, and the table begins with ${String(wanted)}.`,
  noPowers: 'Wavelengths stand across, and no line of values follows.',
  noFields: 'It names no fields: BEGIN_DATA_FORMAT is missing.',
  noData: 'It holds no values.',
  noBands: 'None of its fields is a wavelength, such as SPEC_380 or SPECTRAL_NM.',
  unevenData: (fields: number, values: number) =>
    `It has ${String(values)} values for ${String(fields)} fields, which does not come out even.`,
  neverEnds: (begin: string, end: string) => `${begin} is never ended by ${end}.`,
  theFile: 'The file',
  otherXml: 'It is XML and no spectrum of TM-27: SpectralData is missing.',
  tooLarge: 'It is too large for a file of spectra.',
  tooMany: (given: number, most: number) =>
    `It holds ${String(given)} spectra; at most ${String(most)} are taken at once.`,
  count: (given: number, most: number) =>
    `A spectrum has from 5 to ${String(most)} wavelengths, and this one ${String(given)}.`,
  dark: 'It gives nothing from 380 to 780 nm.',
  late: (nm: number, must: number) =>
    `It begins at ${String(nm)} nm, and must begin at ${String(must)} nm at least.`,
  early: (nm: number, must: number) =>
    `It ends at ${String(nm)} nm, and must go on to ${String(must)} nm at least.`,
  notNanometres: (nm: number) => `Wavelengths must be in nanometres, not ${String(nm)}.`,
  order: (nm: number, before: number) =>
    `Wavelengths must rise: ${String(nm)} nm comes after ${String(before)} nm.`,
  gap: (from: number, to: number, most: number) =>
    `Nothing stands between ${String(from)} and ${String(to)} nm; at most ${String(most)} nm can be bridged.`,
  huge: (nm: number) => `The value at ${String(nm)} nm is too large.`,
  negative: (value: number, nm: number) =>
    `The value at ${String(nm)} nm must be zero or more, not ${String(value)}.`,
  passing: (value: number, nm: number) =>
    `A filter lets through from 0 to 1; at ${String(nm)} nm it says ${String(value)}.`,
  /** What was made up where nothing was read. */
  madeUp: {
    below: (from: number, to: number) =>
      `From ${String(from)} to ${String(to)} nm nothing was read: the first reading stands for it.`,
    above: (from: number, to: number) =>
      `From ${String(from)} to ${String(to)} nm nothing was read: the last reading stands for it.`,
    gap: (from: number, to: number) =>
      `The gap from ${String(from)} to ${String(to)} nm is bridged by a straight line.`,
    noise: (from: number, to: number) =>
      `Values a little below zero between ${String(from)} and ${String(to)} nm count as nothing.`,
  },
  unknownKind: 'This version knows no such spectrum.',
  /** The shelf of the book’s spectra. */
  shelf: {
    one: 'Spectrum',
    none: 'There is no spectrum to add.',
    addOne: (name: string) => `Add spectrum ${name}`,
    addSome: (count: number) => `Add ${String(count)} spectra`,
    gone: 'That spectrum is no longer in the book.',
    unnamed: 'A spectrum needs a name.',
    there: (name: string) => `The book has a spectrum ${name} already.`,
    renameOne: (before: string, after: string) => `Rename spectrum ${before} to ${after}`,
    removeOne: (name: string) => `Remove spectrum ${name}`,
  },
} as const;
