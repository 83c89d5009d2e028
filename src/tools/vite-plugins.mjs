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

/** Puts our licence and those of others beside the app, and refuses a bundle with a package not among them. @returns {Plugin} */
export function notices() {
  return {
    name: 'halfstop-notices',
    apply: 'build',
    generateBundle() {
      const shipped = new Set(dependencies().flatMap((one) => (one.shipped ? [one.name] : [])));
      const unnamed = [...this.getModuleIds()]
        .map(packageOf)
        .filter((name) => name && !shipped.has(name));
      if (unnamed.length > 0) this.error(`In the bundle but not among the notices: ${unnamed[0]}.`);
      this.emitFile({ type: 'asset', fileName: 'THIRD-PARTY.txt', source: noticesText() });
      this.emitFile({
        type: 'asset',
        fileName: 'LICENSE.txt',
        source: readFileSync(join(root, 'LICENSE'), 'utf8'),
      });
    },
  };
}

/** The package a module belongs to, if it is not ours. @param {string} id */
function packageOf(id) {
  return /^[^?]*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
}
