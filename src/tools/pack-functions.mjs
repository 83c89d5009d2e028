import { existsSync, readdirSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { format } from 'node:util';

/**
 * Makes functions/ ready to be packed (`npm pack ./functions`): plain JavaScript and its types in
 * functions/dist, for as long as the packing takes. npm runs this before, and with `clear` after.
 */
const folder = resolve(dirname(fileURLToPath(import.meta.url)), '../../functions');
const dist = join(folder, 'dist');

rmSync(dist, { recursive: true, force: true });
if (process.argv[2] !== 'clear') await compile();

async function compile() {
  const { default: ts } = await import('typescript');
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));
  // No types from outside: what compiles here runs in a browser as well as in Node.
  const program = ts.createProgram(files, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    lib: ['lib.es2023.d.ts'],
    types: [],
    strict: true,
    declaration: true,
    rewriteRelativeImportExtensions: true,
    rootDir: folder,
    outDir: dist,
  });
  const { diagnostics, emitSkipped } = program.emit();
  const faults = [...ts.getPreEmitDiagnostics(program), ...diagnostics];
  for (const { file, messageText } of faults) {
    console.error(
      format('%s: %s', file?.fileName, ts.flattenDiagnosticMessageText(messageText, '\n')),
    );
  }
  if (faults.length > 0 || emitSkipped || !existsSync(join(dist, 'index.js'))) process.exit(1);
}
