/** R1 to R14 as bars, and in words. */
export const renderingFigure = {
  title: 'Colour rendering, R1 to R14',
  what: 'How true each test colour of CIE 13.3 looks under a light, and their mean Ra.',
  filterAlone: (name: string) => `“${name}” is a filter: choose a light, and the filter before it.`,
  ra: 'Ra',
  r: (number: number) => `R${String(number)}`,
  one: (number: number, index: string) => `R${String(number)} ${index}`,
  /** What each of the test colours is, as CIE 13.3 describes them, in short. */
  colourOf: [
    ...['R1, greyish red', 'R2, dark greyish yellow', 'R3, strong yellow green'],
    ...['R4, moderate yellowish green', 'R5, light bluish green', 'R6, light blue'],
    ...['R7, light violet', 'R8, light reddish purple', 'R9, strong red', 'R10, strong yellow'],
    ...['R11, strong green', 'R12, strong blue', 'R13, light skin', 'R14, leaf green'],
  ],
  lead: (name: string, ra: string, colour: string, lowest: string) =>
    `${name}: Ra ${ra}; the lowest is ${colour}, with ${lowest}.`,
  against: (reference: string) => `Against ${reference}, for eyes; a camera may differ.`,
  all: (indices: string) => `${indices}.`,
  pairs: 'Under each bar: above as under the reference, below as under this light.',
  colours:
    'Each colour above as under the reference, below as under this light: about what a screen can show.',
} as const;
