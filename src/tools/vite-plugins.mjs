import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dependencies } from './dependencies.mjs';
import { noticesText } from './notices.mjs';
import { metaPolicy } from './policy.mjs';
import { root } from './root.mjs';

/** @typedef {import('vite').Plugin} Plugin */

/** Writes the content security policy into each built page. The dev server needs inline scripts. @returns {Plugin} */
export function policy() {
  const tag = {
    tag: 'meta',
    attrs: { 'http-equiv': 'Content-Security-Policy', content: metaPolicy },
    injectTo: /** @type {const} */ ('head-prepend'),
  };
  return { name: 'halfstop-policy', apply: 'build', transformIndexHtml: () => [tag] };
}

/** Refuses a bundle that contains a package which the notices do not name. @returns {Plugin} */
export function onlyNamedPackages() {
  return {
    name: 'halfstop-only-named-packages',
    apply: 'build',
    generateBundle() {
      const named = new Set(dependencies().flatMap(({ shipped, name }) => (shipped ? [name] : [])));
      const found = [...this.getModuleIds()].map(packageOf);
      const unnamed = found.find((name) => name !== undefined && !named.has(name));
      if (unnamed) this.error(`${unnamed} is in the bundle but not among the notices.`);
    },
  };
}

/** Puts our licence and those of others beside the app. @returns {Plugin} */
export function notices() {
  return {
    name: 'halfstop-notices',
    apply: 'build',
    generateBundle() {
      const licence = readFileSync(join(root, 'LICENSE'), 'utf8');
      this.emitFile({ type: 'asset', fileName: 'LICENSE.txt', source: licence });
      this.emitFile({ type: 'asset', fileName: 'THIRD-PARTY.txt', source: noticesText() });
    },
  };
}

/** The package a module belongs to, if it is not ours. @param {string} id */
function packageOf(id) {
  return /^[^?]*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
}
