import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dependencies } from './dependencies.mjs';

const opening = `Halfstop is free software under the GNU General Public License, version 3 or later.
It contains the following software, each under its own licence.
`;

const licenceFile = /^(licen[cs]e|copying|ofl)([.-].*)?$/i;

/** The licence as the package brings it. A package without one stops the build. @param {string} folder */
function licenceText(folder) {
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && licenceFile.test(entry.name))
    .map((entry) => readFileSync(join(folder, entry.name), 'utf8').trim());
  return [...new Set(files)].join('\n\n') || licenceComment(folder);
}

/** Or as the first comment of its code has it, for packages without a licence file. @param {string} folder */
function licenceComment(folder) {
  const { module, main } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const code = readFileSync(join(folder, module ?? main ?? 'index.js'), 'utf8');
  const comment = /^\s*\/\*+(.*?)\*\//su.exec(code)?.[1] ?? '';
  const granted = /copyright/iu.test(comment) && /permission is hereby granted/iu.test(comment);
  return granted ? comment.replaceAll(/^[ *]*(@preserve)?/gmu, '').trim() : '';
}

/** The text that goes out with the app: each shipped package with its licence. */
export function noticesText() {
  const parts = dependencies()
    .filter(({ shipped }) => shipped)
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(({ name, version, licence, folder }) => {
      const text = licenceText(folder);
      if (!text) throw new Error(`${name} ${version} brings no licence text.`);
      return `${name} ${version} (${licence})\n\n${text.replaceAll('\r\n', '\n')}\n`;
    });
  return [opening, ...parts].join(`\n${'-'.repeat(72)}\n\n`);
}
