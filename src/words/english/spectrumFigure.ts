/** A spectrum against its reference, drawn and in words. */
export const spectrumFigure = {
  title: 'Spectrum against its reference',
  what: 'A light by wavelength, with tungsten or daylight of its own colour temperature.',
  spectrum: 'Spectrum',
  filter: 'Behind the filter',
  asCells: 'as the cells say',
  cells: 'Cells of the spectrum',
  cellsHelp: 'A cell with the name of a spectrum kept in the book, or two columns: nm and power.',
  filterCells: 'Cells of the filter',
  filterCellsHelp: 'A cell with its name, or two columns: nm and the share let through, 0 to 1.',
  which: 'Choose a spectrum of the book, or the cells that hold one.',
  ofCells: 'Spectrum of the cells',
  through: (light: string, filter: string) => `${light} through ${filter}`,
  withAsMuch: (reference: string) => `${reference}, as bright`,
  lead: (name: string, kelvin: string, duv: string, nm: string) =>
    `${name}: ${kelvin}, Duv ${duv}, highest at ${nm} nm.`,
  peaks: (name: string, nm: string) => `${name}: highest at ${nm} nm.`,
  passes: (name: string, least: string, most: string) =>
    `${name}: lets through from ${least} to ${most}.`,
  against: (reference: string) => `The broken line is ${reference}, as bright to the eye.`,
  lacks: (ranges: string) => `It has less than half of that ${ranges}.`,
  lacksNothing: 'Nowhere for long has it less than half of that.',
  fromTo: (from: string, to: string) => `from ${from} to ${to} nm`,
  indices: (ra: string, ssi: string) => `Ra ${ra}, SSI ${ssi} to its own temperature.`,
  television: (tlci: string) => `TLCI ${tlci}.`,
  milliwatts: 'mW/(m²·nm)',
  ofHighest: '% of its highest',
  share: '% let through',
  nm: 'nm',
  colours: 'Colours are about what a screen can show.',
  /** The light that one is compared with. */
  reference: {
    planck: (kelvin: string) => `Planckian light of ${kelvin}`,
    daylight: (kelvin: string) => `daylight of ${kelvin}`,
  },
} as const;
