/** The spectra of the book: their list, and what one of them comes to. */
export const spectraList = {
  title: 'Spectra',
  noneBefore: 'The book keeps no spectrum yet. Formulas such as',
  noneAfter: 'look them up here.',
  caution:
    'A spectrum is one lamp, at one level, when it was read. Bright sources, ultraviolet and infrared hurt eyes and skin; none of these figures says that a light is safe to look at.',
  name: 'Name',
  shown: 'Shown below',
  showOne: (name: string) => `Show ${name}`,
  nameOf: (name: string) => `Name ${name}`,
  remove: 'Remove',
  removeOne: (name: string) => `Remove ${name}`,
  kelvin: 'Colour temperature',
  duv: 'Duv',
  ra: 'Ra',
  r9: 'R9',
  ssi: 'SSI',
  tlci: 'TLCI',
  filter: 'A filter',
  unreadable: 'This version cannot read it. It is kept as it is.',
  every: (from: string, to: string, step: string) => `${from} to ${to} nm, every ${step} nm`,
  samples: 'Add sample spectra',
  of: (file: string, sentence: string) => `${file}: ${sentence}`,
  report: (name: string) => `What ${name} comes to`,
  behind: 'Behind a filter',
  noFilter: 'none',
  none: '–',
  both: (x: string, y: string) => `${x}, ${y}`,
  tint: (duv: string, side: 'green' | 'magenta' | 'neither') =>
    side === 'neither' ? duv : `${duv}, ${side === 'green' ? 'to green' : 'to magenta'}`,
  similarTo: (reference: string) => `SSI to ${reference}`,
  planck: (kelvin: string) => `Planckian light of ${kelvin}`,
  daylight: (kelvin: string) => `daylight of ${kelvin}`,
  peak: 'Peak',
  nanometres: (nm: string) => `${nm} nm`,
  level: 'Level where it was read',
  takes: 'The filter takes',
  nothingThrough: 'Nothing comes through.',
  ofTungsten: 'Of tungsten, 3200 K',
  ofDaylight: 'Of daylight, 5600 K',
  loses: (stops: string) => `takes ${stops}, and leaves no white`,
  becomes: (kelvin: string, duv: string, stops: string) =>
    `makes ${kelvin}, Duv ${duv}; takes ${stops}`,
  titled: (figure: string, spectrum: string) => `${spectrum}: ${figure}`,
  toSheet: 'Put on the sheet',
  figureTo: (figure: string) => `Put ${figure} on the sheet`,
  onSheet: 'The figure stands under the sheet in view.',
  /** How files come onto the shelf. */
  taking: {
    fromFiles: 'From files',
    fromFilesHelp:
      'Tables of wavelength and power (CSV, TSV, text), CGATS.17 or TM-27, several at once: choose them, drop them here, or paste a table. Transmission of a filter comes in the same way.',
    choose: 'Choose files',
    pasted: 'pasted',
    reading: (done: number, count: number) => `Reading ${String(done)} of ${String(count)}`,
    added: (count: number) =>
      count === 0
        ? 'No spectrum added.'
        : `${String(count)} ${count === 1 ? 'spectrum' : 'spectra'} added.`,
  },
} as const;
