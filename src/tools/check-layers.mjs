import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { mayImport, owners } from './layers.mjs';
import { root } from './root.mjs';

/** @typedef {import('dependency-cruiser').IForbiddenRuleType} Rule */

/** @param {readonly string[]} folders */
const inside = (folders) => folders.map((folder) => `^${folder}/`);

/** @param {string} text */
const escape = (text) => text.replaceAll(/[.\\/@+-]/g, String.raw`\$&`);

/** @returns {Rule[]} */
function rules() {
  const layers = Object.entries(mayImport).map(([folder, others]) => ({
    name: `${folder} imports only what it may`,
    from: { path: `^${folder}/` },
    to: { path: '^(functions|src|templates|tests)/', pathNot: inside([folder, ...others]) },
  }));
  const libraries = Object.entries(owners).map(([library, folders]) => ({
    name: `${library} belongs to ${folders.join(', ')}`,
    from: { path: '^(functions|src)/', pathNot: inside([...folders, 'src/tools']) },
    to: { path: `^node_modules/${escape(library)}/` },
  }));
  return [
    ...layers,
    ...libraries,
    {
      name: 'every outside library has an owner',
      from: { path: '^(functions|src)/', pathNot: '^src/tools/' },
      to: { path: '^node_modules/', pathNot: inside(Object.keys(owners).map(inModules)) },
    },
    {
      name: 'functions stand alone',
      from: { path: '^functions/' },
      to: { pathNot: '^functions/', couldNotResolve: false },
    },
    {
      name: 'the command line reaches nothing of the screen',
      from: { path: '^src/cli/' },
      to: { path: '^src/(panels|grid|figures|storage|app)/', reachable: true },
    },
    {
      name: 'Node is for the tools',
      from: { path: '^src/', pathNot: '^src/(tools/|grid/vite-aliases)' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no circles', from: {}, to: { circular: true } },
    {
      // Declaration files name types, which the compiler finds and complains of itself.
      name: 'every import is found',
      from: { pathNot: String.raw`\.d\.ts$` },
      to: { couldNotResolve: true },
    },
    {
      name: 'the product does not use its tests or tools',
      from: { path: '^(functions|src)/', pathNot: '^src/tools/' },
      to: { path: '^(tests|src/tools)/' },
    },
  ].map((rule) => /** @type {Rule} */ ({ severity: 'error', ...rule }));
}

/** @param {string} library */
const inModules = (library) => `node_modules/${escape(library)}`;

const sourceFolders = ['functions', 'src', 'templates'];

/**
 * Holds every import below a folder against the table.
 * @returns {Promise<{ modules: number, faults: string[] }>}
 */
export async function checkLayers(folder = root) {
  const { output } = await cruise(
    sourceFolders.filter((name) => existsSync(join(folder, name))),
    {
      baseDir: folder,
      ruleSet: { forbidden: rules() },
      validate: true,
      tsPreCompilationDeps: true,
      doNotFollow: { path: 'node_modules' },
      exclude: { path: String.raw`\.mjs$` },
    },
    {
      extensions: ['.ts', '.js', '.json', '.css'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'default'],
    },
  );
  if (typeof output === 'string') throw new Error(output);
  const { summary, modules } = output;
  return {
    modules: modules.filter(({ source }) => source.endsWith('.ts')).length,
    faults: summary.violations.map(
      ({ rule, from, to, cycle }) => `${from} → ${cycle ? written(cycle) : to} (${rule.name})`,
    ),
  };
}

/** @param {readonly { name: string }[]} cycle */
const written = (cycle) => cycle.map(({ name }) => name).join(' → ');

/** The step of `npm run check`. A run that saw nothing proves nothing. */
export async function layerFaults() {
  const { modules, faults } = await checkLayers();
  return modules === 0 ? ['The layer check found no module to look at.'] : faults;
}
