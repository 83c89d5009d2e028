/** Knip reads scripts only: what else refers to files is told to it as imports. */
const asImports = (paths) => paths.map((path) => `import '${path}';`).join('\n');

const usedByStyles = (text) =>
  asImports([...text.matchAll(/(?:@import|url\()\s*['"]([^'"]+)['"]/g)].map(([, path]) => path));

const usedByPages = (text) =>
  asImports(
    [...text.matchAll(/(?:src|href)="([^"]+\.(?:ts|css))"/g)].map(([, path]) =>
      path.startsWith('/') ? import.meta.dirname + path : path,
    ),
  );

export default {
  entry: [
    'index.html',
    'functions/index.ts',
    'functions/{marks,quantities}/index.ts',
    'src/app/offline/sw.ts',
    'src/cli/main.ts',
    'src/grid/handsontable/stubs/*.ts',
    'src/tools/*.mjs',
    'src/tools/generate/*.{mjs,ts}',
    'src/tools/mutation/*.mjs',
    'src/tools/pictures/*.mjs',
    'templates/*/plan.ts',
    'tests/**/*.test.ts',
    'tests/accuracy/table.ts',
    'tests/bench/*.bench.ts',
    'tests/browser/pages/*.html',
    // Stands in for src/words/others.ts on the test pages, by an alias.
    'tests/support/others.ts',
  ],
  project: ['{functions,src,templates,tests}/**/*.{ts,mjs,css,html}', '*.config.{ts,js}'],
  ignoreExportsUsedInFile: true,
  compilers: { css: usedByStyles, html: usedByPages },
};
