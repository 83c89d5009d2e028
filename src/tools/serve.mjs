import { createReadStream } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, sep } from 'node:path';
import { headerPolicy } from './policy.mjs';

/** @type {Record<string, string>} */
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

const securityHeaders = {
  'Content-Security-Policy': headerPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Names under assets/ carry a hash of their content, so they never change. */
const cacheFor = (/** @type {string} */ path) =>
  path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';

/**
 * The file a request path names, or undefined. Nothing outside the folder is ever reached, also
 * not through a link, and nothing hidden.
 * @param {string} folder a real path
 * @param {string} path decoded, starts with a slash
 */
async function fileFor(folder, path) {
  if (path.includes('\0') || path.includes('\\')) return undefined;
  if (path.split('/').some((part) => part.startsWith('.'))) return undefined;
  const wanted = join(folder, path.endsWith('/') ? `${path}index.html` : path);
  try {
    const file = await realpath(wanted);
    const info = await stat(file);
    return file.startsWith(folder + sep) && info.isFile() ? { file, size: info.size } : undefined;
  } catch {
    return undefined;
  }
}

/** @param {string | undefined} url */
function pathOf(url = '/') {
  try {
    return decodeURIComponent(/** @type {string} */ (url.split(/[?#]/)[0]));
  } catch {
    return '\0';
  }
}

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 * @param {string} folder
 */
async function answer(request, response, folder) {
  for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const path = pathOf(request.url);
  const found = await fileFor(folder, path);
  if (!found) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found.\n');
    return;
  }
  response.writeHead(200, {
    'Content-Type': types[extname(found.file)] ?? 'application/octet-stream',
    'Content-Length': found.size,
    'Cache-Control': cacheFor(path),
  });
  if (request.method === 'HEAD') response.end();
  else createReadStream(found.file).pipe(response);
}

/**
 * Serves a folder on this machine only.
 * @param {object} options
 * @param {string} options.folder
 * @param {number} [options.port] the next free one is used when it is taken; 0 takes any
 * @param {() => Promise<void>} [options.before] awaited before each answer
 * @returns {Promise<{ url: string, port: number, close: () => Promise<void> }>}
 */
export async function serve({ folder, port = 0, before }) {
  const server = createServer((request, response) => {
    const ready = before ? before() : Promise.resolve();
    ready
      .then(async () => answer(request, response, await realpath(folder)))
      .catch((/** @type {unknown} */ reason) => {
        console.error(reason);
        if (!response.headersSent) response.writeHead(500);
        response.end();
      });
  });
  const taken = await listen(server, port);
  return {
    url: `http://localhost:${taken}/`,
    port: taken,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @returns {Promise<number>} the port it got
 */
function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once('error', (/** @type {NodeJS.ErrnoException} */ reason) => {
      if (reason.code !== 'EADDRINUSE' || port === 0) reject(reason);
      else resolve(listen(server, 0));
    });
    server.listen(port, '127.0.0.1', () => {
      server.removeAllListeners('error');
      const address = server.address();
      if (address && typeof address === 'object') resolve(address.port);
    });
  });
}
