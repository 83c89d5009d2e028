/** The intensity of a fixture by direction, drawn and in words. */
export const polar = {
  title: 'Polar intensity of a fixture',
  what: 'Candela by direction, level and upright, with beam and field.',
  fixture: 'Fixture',
  fixtureHelp: 'A cell with the name of a fixture kept in the book.',
  empty: 'The cell of the fixture is empty.',
  unknown: (name: string) => `The book has no fixture “${name}”.`,
  unreadable: (name: string, reason: string) => `“${name}” cannot be read. ${reason}`,
  dark: (name: string) => `“${name}” gives no light.`,
  lead: (name: string, candela: string) => `${name}: ${candela} at most.`,
  edges: (beam: string, field: string) =>
    `Beam (half of the highest) ${beam}, field (a tenth) ${field}.`,
  across: (level: string, upright: string) => `${level} level and ${upright} upright`,
  noEdge: 'none',
  lumens: (flux: string) => `All in all ${flux}.`,
  perWatt: (flux: string, watts: string, each: string) =>
    `All in all ${flux} from ${watts}, ${each} lm/W.`,
  clean: 'A photometric file describes a clean, new fixture in a laboratory.',
  level: 'level, C0 to the right and C180',
  upright: 'upright, C90 (up) to the right and C270',
  beam: (degrees: string) => `beam ${degrees}`,
  field: (degrees: string) => `field ${degrees}`,
} as const;
