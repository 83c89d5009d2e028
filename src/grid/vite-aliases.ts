import { fileURLToPath } from 'node:url';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/**
 * Bundles handsontable from its modules: the default entry carries an old core-js, needs `eval`, and
 * brings three libraries for cell types that are never used.
 */
export const gridAliases = [
  { find: /^handsontable$/, replacement: here('../../node_modules/handsontable/es/index.js') },
  {
    find: /^@babel\/polyfill\/lib\/noConflict$/,
    replacement: here('./handsontable/stubs/polyfill.ts'),
  },
  { find: /^moment$/, replacement: here('./handsontable/stubs/moment.ts') },
  { find: /^numbro$/, replacement: here('./handsontable/stubs/numbro.ts') },
  { find: /^pikaday$/, replacement: here('./handsontable/stubs/pikaday.ts') },
];
