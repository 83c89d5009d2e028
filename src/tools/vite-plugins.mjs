import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { dependencies } from './dependencies.mjs';
import { noticesText } from './notices.mjs';
import { offlineList } from './offline.mjs';
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
      const unnamed = found.filter((name) => name !== undefined && !named.has(name));
      const faults = [...new Set(unnamed)]
        .sort()
        .map((name) => `${name} is in the bundle but not among the notices.`);
      if (faults.length > 0) this.error(faults.join(' '));
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

/** The app is imported after its language; the page asks for it at once all the same. @returns {Plugin} */
export function early() {
  return {
    name: 'halfstop-early',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler(_, { path, bundle = {} }) {
        if (path !== '/index.html') return [];
        const chunkOf = (/** @type {string} */ path) =>
          Object.values(bundle).find(
            (file) => file.type === 'chunk' && file.facadeModuleId === join(root, path),
          );
        const [page, app] = [chunkOf('index.html'), chunkOf('src/app/app.ts')];
        if (!page || !app) throw new Error('The page found no app to ask for.');
        const asked = withImports(page.fileName, bundle);
        const more = withImports(app.fileName, bundle).filter((file) => !asked.includes(file));
        return more.map((file) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
          injectTo: /** @type {const} */ ('head'),
        }));
      },
    },
  };
}

/**
 * A chunk and all that it imports.
 * @param {string} first
 * @param {import('vite').Rolldown.OutputBundle} bundle
 */
function withImports(first, bundle) {
  const all = new Set([first]);
  for (const name of all) {
    const file = bundle[name];
    if (file?.type === 'chunk') for (const next of file.imports) all.add(next);
  }
  return [...all];
}

/** Where the app looks for it: beside the page, so that all of the app is its to keep. */
const worker = 'sw.js';

/** Adds the service worker that keeps the whole app for when there is no network. @returns {Plugin} */
export function offline() {
  let folder = '';
  let isApp = false;
  return {
    name: 'halfstop-offline',
    apply: 'build',
    enforce: 'post',
    configResolved(config) {
      folder = config.publicDir;
      // Bare pages that only tests open are not the app.
      isApp = folder !== '';
    },
    buildStart() {
      const id = join(root, 'src/app/offline/sw.ts');
      if (isApp) this.emitFile({ type: 'chunk', id, fileName: worker });
    },
    generateBundle: {
      // After all others: the hashes are of what is written.
      order: 'post',
      handler(_, bundle) {
        const script = bundle[worker];
        if (script?.type !== 'chunk') return;
        const built = Object.values(bundle).flatMap((file) =>
          file === script ? [] : [[file.fileName, file.type === 'chunk' ? file.code : file.source]],
        );
        script.code = offlineList(Object.fromEntries([...built, ...copied(folder)])) + script.code;
      },
    },
  };
}

/** What is copied as it is. @param {string} folder @returns {[string, Buffer][]} */
function copied(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => [relative(folder, path).replaceAll('\\', '/'), readFileSync(path)]);
}

/** The package a module belongs to, if it is not ours. @param {string} id */
function packageOf(id) {
  return /^[^?]*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
}
