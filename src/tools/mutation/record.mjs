import { table } from '../machine.mjs';

/**
 * What is known of the mutants of the code, and the page that says it. Runs that tried a part each
 * are joined here: every file keeps the commit, the seed and the share of the run that tried it last.
 * Where only the sums of a whole folder are known, they stand under the folder's name until one of
 * its files is tried.
 * @typedef {object} Tried what one run found in one file or folder
 * @property {string} commit
 * @property {number} seed
 * @property {number} share share of its functions that were tried
 * @property {number} mutants
 * @property {number} killed
 * @property {readonly string[]} survivors each as "what stood there → what stood there instead", in
 *   a folder with the file's name and a colon before it
 * @typedef {Record<string, Tried>} Known by file or folder
 * @typedef {{ file: string, change: string, reason: string }} Reason
 * @typedef {object} Now how the files stand when the page is written
 * @property {readonly string[]} files all that are to be tried
 * @property {ReadonlySet<string>} changed those that are not as they were when they were tried
 */

const percent = (/** @type {number} */ part, /** @type {number} */ whole) =>
  whole === 0 ? 'none' : `${((100 * part) / whole).toFixed(1)} %`;
const inTable = (/** @type {string} */ text) =>
  text.replaceAll('|', String.raw`\|`).replaceAll(/\s+/g, ' ');

/**
 * What belongs together, each group by its key. @template T
 * @param {readonly T[]} all @param {(one: T) => string} keyOf @returns {[key: string, group: T[]][]}
 */
function groups(all, keyOf) {
  /** @type {Map<string, T[]>} */
  const found = new Map();
  for (const one of all) {
    const group = found.get(keyOf(one));
    if (group) group.push(one);
    else found.set(keyOf(one), [one]);
  }
  return [...found];
}

const isFile = (/** @type {string} */ path) => path.endsWith('.ts');

/** The folder that a file counts for; `functions` for those of it that stand in none. @param {string} path */
export function folderOf(path) {
  const [room = '', folder = '', name] = path.split('/');
  if (room !== 'functions') return `${room}/${folder}`;
  return name === undefined && isFile(path) ? 'functions' : folder;
}

/** What is known of a file, by itself or with its folder. @param {Known} known @param {string} file */
const knownOf = (known, file) => known[file] ?? known[`functions/${folderOf(file)}`];

/** The commit at which a file was tried last. @param {Known} known @param {string} file */
export const triedAt = (known, file) => knownOf(known, file)?.commit;

/** What was known, with what a run found in the files that it tried. @param {Known} known @param {Known} found */
export function joined(known, found) {
  const anew = new Set(Object.keys(found).map(folderOf));
  const kept = Object.entries(known).filter(([path]) => isFile(path) || !anew.has(folderOf(path)));
  const all = Object.entries({ ...Object.fromEntries(kept), ...found });
  return Object.fromEntries(all.sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** The sums over some of the files. @param {readonly Tried[]} tried */
export function sums(tried) {
  const sum = (/** @type {'mutants' | 'killed'} */ of) =>
    tried.reduce((total, each) => total + each[of], 0);
  return { mutants: sum('mutants'), killed: sum('killed') };
}

/** Survivors for which no reason stands, and reasons that no survivor needs. @param {Known} known @param {readonly Reason[]} reasons */
export function open(known, reasons) {
  const survivors = listed(known, reasons);
  const unexplained = survivors.filter(({ reason }) => reason === '');
  const unneeded = reasons.filter(
    ({ file, change }) => known[file] && !known[file].survivors.includes(change),
  );
  return { unexplained, unneeded };
}

/** @param {Known} known @param {readonly Reason[]} reasons @returns {Reason[]} */
function listed(known, reasons) {
  return Object.entries(known).flatMap(([path, { survivors }]) =>
    survivors.map((survivor) => {
      const [, name = '', inFolder = ''] = /^(\S+): (.*)$/su.exec(survivor) ?? [];
      const file = isFile(path) ? path : `${path}/${name}`;
      const change = isFile(path) ? survivor : inFolder;
      const entry = reasons.find((one) => one.file === file && one.change === change);
      return { file, change, reason: entry?.reason ?? '' };
    }),
  );
}

/** @param {Known} known @param {readonly Reason[]} reasons @param {Now} now */
export function pageOf(known, reasons, { files, changed }) {
  const { mutants, killed } = sums(Object.values(known));
  const folders = [...new Set(Object.keys(known).map(folderOf))].sort();
  const rows = folders.map((folder) => {
    const tried = Object.entries(known).filter(([file]) => folderOf(file) === folder);
    const here = sums(tried.map(([, one]) => one));
    const runs = groups(tried, ([, one]) => runOf(one)).map(
      ([run, those]) => `${run} (${countOf(those.map(([path]) => path))})`,
    );
    return [
      folder,
      String(here.mutants),
      String(here.killed),
      percent(here.killed, here.mutants),
      runs.join('; '),
    ];
  });
  const untried = files.filter((file) => !knownOf(known, file));
  const stale = files.filter((file) => knownOf(known, file) && changed.has(file));
  return [
    '# Mutants',
    'Written by `node src/tools/mutate.mjs`: the code changed in one place after the other, and whether a test noticed: functions/ by its unit tests and the standards, src/book, src/check and src/files each by the unit tests of that folder alone, without the long random ones. Words for people and proofs (examples, laws) of functions/, tables and what else runs once when a file loads are left alone. Folders and files may be tried one by one; the last column says which run, by commit, seed and share of the functions, each figure is from. `npm run hard` tries all of functions/ and a tenth of the others.',
    `${killed} of ${mutants} killed: **${percent(killed, mutants)}**.`,
    table(['folder', 'mutants', 'killed', 'share', 'tried at'], rows),
    ...named('Changed since they were tried', stale),
    ...named('Not tried', untried),
    '## Survivors',
    table(
      ['file', 'change', 'why no test can or need notice'],
      listed(known, reasons).map(({ file, change, reason }) => [
        file,
        `\`${inTable(change)}\``,
        inTable(reason || 'not looked at yet'),
      ]),
    ),
  ].join('\n\n');
}

/** @param {readonly string[]} paths */
function countOf(paths) {
  if (!paths.every(isFile)) return 'the folder';
  return paths.length === 1 ? '1 file' : `${paths.length} files`;
}

/** @param {Tried} tried */
function runOf({ commit, seed, share }) {
  const part = share === 1 ? 'all' : `${Math.round(100 * share)} %`;
  return `${commit}, seed ${seed}, ${part}`;
}

/** @param {string} what @param {readonly string[]} files */
function named(what, files) {
  return files.length === 0 ? [] : [`${what}: ${files.join(', ')}.`];
}
