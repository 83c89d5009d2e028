/** The fixtures of the book. */
export const fixtures = {
  noneBefore: 'The book keeps no fixture yet. Formulas such as',
  noneAfter: 'look them up here.',
  optional: (field: string) => `${field} (may be left out)`,
  tooLarge: (file: string) => `${file}: It is too large for a photometric file.`,
  title: 'Fixtures',
  caution:
    'A file describes a clean new fixture. Heat, rigging and what bright light does to eyes are for the crew to judge.',
  name: 'Name',
  highest: 'Highest',
  beam: 'Beam',
  field: 'Field',
  light: 'Light',
  draws: 'Draws',
  lookedAt: 'Light straight ahead at',
  at: (distance: string) => (distance === '' ? 'Ahead' : `At ${distance}`),
  nearFile: (stops: string, from: string) =>
    `nearer than ${from}, five times its face: up to ${stops} less`,
  nearPanel: (stops: string, from: string) =>
    `nearer than ${from}: ${stops} less than by inverse square`,
  readNear: (stops: string) => `read too near for its face: the candela come out ${stops} low`,
  changeOrRemove: 'Change or remove',
  nameOf: (name: string) => `Name ${name}`,
  changeOne: (name: string) => `Change ${name}`,
  keep: 'Keep',
  note: 'Note',
  lightOfFile: (file: string) =>
    `Its light is that of ${file} and stays so: for other light bring another file. What it is called, what it draws and a note are yours to change.`,
  removeOne: (name: string) => `Remove ${name}`,
  fromSheet: 'From a data sheet or a reading',
  kind: 'Kind of fixture',
  aBeam: 'a beam',
  aPanel: 'a panel',
  add: 'Add',
  file: (name: string) => `File ${name}`,
  dataSheet: 'Data sheet',
  panel: (width: string, height: string) => `Panel ${width} × ${height}`,
  candela: 'Candela, or lux at the distance',
  candelaAt: 'Distance of that lux',
  beamAngle: 'Beam angle, at a half',
  fieldAngle: 'Field angle, at a tenth',
  across: 'Lens or reflector across',
  watts: 'Watts',
  width: 'Width',
  height: 'Height',
  luminance: 'Luminance, or lux at the distance',
  luminanceAt: 'Distance of that lux, straight in front',
  needsName: 'The fixture needs a name.',
  missing: (field: string) => `${field} is missing.`,
  aboveZero: (field: string) => `${field} must be more than zero.`,
  below180: 'Beam and field angle must be less than 180°.',
  fieldWider: 'The field angle must be wider than the beam angle.',
  /** How files come onto the shelf. */
  taking: {
    added: (count: number) =>
      count === 0
        ? 'No fixture added.'
        : `${String(count)} ${count === 1 ? 'fixture' : 'fixtures'} added.`,
    fromFiles: 'From photometric files',
    fromFilesHelp:
      'LM-63 (.ies) or EULUMDAT (.ldt), several at once: choose them, drop them here, or paste the text of one.',
    choose: 'Choose files',
    reading: (done: number, count: number) => `Reading ${String(done)} of ${String(count)}`,
    pasted: 'pasted text',
  },
} as const;
