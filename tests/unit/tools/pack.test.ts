import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';

const functions = join(import.meta.dirname, '../../../functions');
/** Empty, and with nothing above it that a package could be found in. */
const home = mkdtempSync(join(tmpdir(), 'halfstop-pack-'));
const installed = join(home, 'node_modules/halfstop-functions');

function npm(...args: readonly string[]): string {
  return execFileSync('npm', args, {
    cwd: home,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

beforeAll(() => {
  const tarball = npm('pack', functions, '--pack-destination', home, '--silent').trim();
  writeFileSync(join(home, 'package.json'), '{ "private": true, "type": "module" }');
  npm(
    'install',
    '--offline',
    '--no-audit',
    '--no-fund',
    join(home, tarball.split('\n').at(-1) ?? ''),
  );
});

afterAll(() => rmSync(home, { recursive: true }));

/** What a program in the empty folder prints. */
function print(program: string): unknown {
  const file = join(home, 'program.js');
  writeFileSync(file, program);
  return JSON.parse(execFileSync(process.execPath, [file], { cwd: home, encoding: 'utf8' }));
}

const filesOf = (ending: string) =>
  readdirSync(installed, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(installed, name));

test('it installs alone: one package, no dependencies, no network', () => {
  const packages = readdirSync(join(home, 'node_modules')).filter((name) => !name.startsWith('.'));
  expect(packages).toEqual(['halfstop-functions']);
  const stated = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as object;
  expect(Object.keys(stated).filter((key) => /dependencies/i.test(key))).toEqual([]);
});

test('it is under its own licence, with its own page', () => {
  expect(readFileSync(join(installed, 'LICENSE'), 'utf8')).toMatch(/^MIT License/);
  expect(readFileSync(join(installed, 'README.md'), 'utf8')).toContain('### FSTOPS');
});

test('it works out stops, lux and a colour temperature in an empty folder', () => {
  const results = print(`
    import { CCT, EVLUX, FSTOPS, catalogue } from 'halfstop-functions';
    import { call } from 'halfstop-functions/call';
    import { usual } from 'halfstop-functions/usual';
    const results = [
      call(FSTOPS, ['f/2.8', 'f/11'], usual),
      call(EVLUX, [12], usual),
      Math.round(call(CCT, [0.3127, 0.329], usual)),
      call(FSTOPS, [{ blank: true }, 4], usual).message,
      catalogue.length > 100,
    ];
    console.log(JSON.stringify(results));
  `);
  expect(results).toEqual([-4, 10240, 6504, 'waiting for reading', true]);
});

test('no file of it imports anything outside it, or asks for the world around it', () => {
  const scripts = filesOf('.js');
  expect(scripts.length).toBeGreaterThan(100);
  for (const file of scripts) {
    const text = readFileSync(file, 'utf8');
    const { importedFiles } = ts.preProcessFile(text, true, true);
    for (const { fileName } of importedFiles) {
      const target = resolve(file, '..', fileName);
      expect(relative(installed, target), `${file} imports ${fileName}`).not.toMatch(/^\.\./);
      expect(existsSync(target), `${file} imports ${fileName}`).toBe(true);
    }
    const code = ts
      .transpileModule(text, { compilerOptions: { removeComments: true } })
      // Sentences may speak of a window; only what is run is looked at.
      .outputText.replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "''");
    expect(code, file).not.toMatch(/\b(process|globalThis|window|document|fetch|require)\b[.(]/);
    expect(code, file).not.toMatch(/Date\.now|new Date\(\)|Math\.random/);
  }
});

test('it carries types that a program in TypeScript is held to', () => {
  const file = join(home, 'program.ts');
  writeFileSync(
    file,
    `import { FSTOPS } from 'halfstop-functions';
     import { call } from 'halfstop-functions/call';
     import { usual } from 'halfstop-functions/usual';
     export const right = call(FSTOPS, ['f/2.8', 4], usual);
     export const wrong: string = FSTOPS.run(2.8, 4);`,
  );
  const program = ts.createProgram([file], {
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    lib: ['lib.es2023.d.ts'],
    types: [],
    strict: true,
    noEmit: true,
  });
  const faults = ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  expect(faults).toEqual([expect.stringContaining("is not assignable to type 'string'")]);
});

test('packing leaves nothing behind', () => {
  expect(readdirSync(functions)).not.toContain('dist');
});
