import { dependencies } from './dependencies.mjs';

/** Open source licences whose works may be passed on together with ours. */
const openSource = new Set([
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  // For data, such as the list of browsers that compilers read; may be combined with the GPL.
  'CC-BY-4.0',
  'CC0-1.0',
  'GPL-3.0-only',
  'GPL-3.0-or-later',
  'ISC',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
  'Python-2.0',
  'Unlicense',
]);

/** The last grid under MIT, and the engine whose internals we know. */
const exactly = { handsontable: '6.2.2', hyperformula: '3.5.0' };

/**
 * Whether an SPDX expression leaves us an open source licence: any side of an OR, every side of an AND.
 * @param {string} expression
 * @returns {boolean}
 */
export function isOpenSource(expression) {
  const text = expression.trim();
  const bare = text.startsWith('(') && text.endsWith(')') ? text.slice(1, -1) : text;
  if (bare.includes('(')) return false;
  return bare.split(' OR ').some((side) => side.split(' AND ').every((one) => openSource.has(one)));
}

/**
 * Holds the lock file against the rules.
 * @param {readonly import('./dependencies.mjs').Dependency[]} all
 * @returns {string[]} what is wrong
 */
export function licenceFaults(all = dependencies()) {
  const foreign = all
    .filter(({ licence }) => !isOpenSource(licence))
    .map(({ name, version, licence }) => `${name} ${version}: "${licence}" is not on the list.`);
  const moved = Object.entries(exactly).flatMap(([wanted, version]) => {
    const found = all.filter(({ name }) => name === wanted).map((one) => one.version);
    return found.join() === version
      ? []
      : [`${wanted} must be ${version}; found "${found.join()}".`];
  });
  return [...foreign, ...moved];
}

if (process.argv[1] === import.meta.filename) {
  for (const { name, version, licence, shipped } of dependencies()) {
    console.log([licence.padEnd(16), shipped ? 'shipped' : '       ', name, version].join('  '));
  }
}
