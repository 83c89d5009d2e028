import { createHash } from 'node:crypto';

const hash = (/** @type {string} */ kind, /** @type {Uint8Array | string} */ content) =>
  createHash(kind).update(content);

/**
 * What stands in front of the service worker: every file it keeps with the hash of its content, and
 * a version that is another one as soon as any of them is.
 * @param {Readonly<Record<string, Uint8Array | string>>} contents by path
 */
export function offlineList(contents) {
  const files = Object.fromEntries(
    Object.keys(contents)
      .sort()
      .map((path) => [
        path,
        `sha256-${hash('sha256', /** @type {string} */ (contents[path])).digest('base64')}`,
      ]),
  );
  const version = hash('sha256', JSON.stringify(files)).digest('hex').slice(0, 16);
  return `const offline=${JSON.stringify({ version, files })};\n`;
}
