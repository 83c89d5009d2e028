/**
 * Who may import whom. Left the folder, right what it may import besides itself.
 * @type {Record<string, readonly string[]>}
 */
export const mayImport = {
  functions: [],
  'src/words': [],
  'src/formula': ['functions'],
  'src/book': ['functions/quantities', 'src/formula'],
  'src/engine': ['functions', 'src/formula', 'src/book'],
  'src/check': ['functions', 'src/formula', 'src/book', 'src/engine'],
  'src/reference': ['functions', 'src/formula', 'src/book', 'src/engine'],
  'src/files': ['functions', 'src/formula', 'src/book'],
  'src/storage': ['src/book'],
  'src/session': ['src/book'],
  'src/commands': [
    'src/book',
    'src/engine',
    'src/check',
    'src/files',
    'src/storage',
    'src/session',
  ],
  'src/figures': ['functions'],
  'src/grid': [
    'src/book',
    'src/engine',
    'src/check',
    'src/reference',
    'src/commands',
    'src/session',
  ],
};

const belowPanels = [...Object.keys(mayImport)].filter((folder) => folder !== 'src/grid');

/** Rooms for one job each: they may import panels, never another room. */
export const rooms = ['src/walk', 'src/plan', 'src/choose', 'src/repeat', 'src/teach'];

mayImport['src/panels'] = belowPanels;
for (const room of rooms) mayImport[room] = [...belowPanels, 'src/panels'];

/** The sheets that it makes from a record are planned as templates are. */
mayImport['src/repeat'] = [...(mayImport['src/repeat'] ?? []), 'templates'];

/** The exercises that come along are planned as templates are. */
mayImport['src/teach'] = [...(mayImport['src/teach'] ?? []), 'templates'];

/** The command line uses the rooms' logic and nothing of the screen. */
mayImport['src/cli'] = [
  ...['functions', 'src/formula', 'src/book', 'src/engine', 'src/check', 'src/files'],
  ...['src/reference', ...rooms],
];

/** What is said stands under everything upstairs. */
for (const folder of Object.keys(mayImport)) {
  if (folder !== 'functions' && folder !== 'src/words')
    mayImport[folder] = [...(mayImport[folder] ?? []), 'src/words'];
}

/** Each outside library has its owners. @type {Record<string, readonly string[]>} */
export const owners = {
  '@borgar/fx': ['src/formula'],
  valibot: ['src/book'],
  hyperformula: ['src/engine'],
  'astronomy-engine': ['src/engine'],
  handsontable: ['src/grid'],
  papaparse: ['src/files'],
  hucre: ['src/files'],
  fflate: ['src/files'],
  sax: ['src/files'],
  idb: ['src/storage'],
  'd3-array': ['src/figures'],
  'd3-contour': ['src/figures'],
  'd3-scale': ['src/figures'],
  'd3-shape': ['src/figures'],
  yalps: ['src/choose'],
  'lit-html': ['src/panels', ...rooms],
  '@preact/signals-core': ['src/panels', ...rooms],
  'lucide-static': ['src/panels', ...rooms],
  'file-saver': ['src/app'],
  '@fontsource-variable/source-sans-3': ['src/app', 'src/panels'],
  '@fontsource-variable/source-serif-4': ['src/app', 'src/panels'],
};
