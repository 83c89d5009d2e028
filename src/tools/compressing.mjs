import { createServer } from 'node:http';
import { extname } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What a server compresses. Woff2 and PNG travel as they are, since they are compressed already. */
const text = new Set(['.js', '.css', '.html', '.json', '.svg', '.webmanifest']);

/** @param {string} path */
export const ending = (path) => (path.endsWith('/') ? '.html' : extname(path));

/**
 * Passes requests on to `behind`, compresses what comes back and counts it.
 * @param {string} behind
 * @param {(path: string, bytes: number) => void} count
 * @returns {Promise<{ url: string, close: () => void }>}
 */
export function compressing(behind, count) {
  /** @param {import('node:http').IncomingMessage} request @param {import('node:http').ServerResponse} response */
  const pass = async (request, response) => {
    const path = new URL(request.url ?? '/', behind).pathname;
    const answer = await fetch(new URL(path, behind));
    const whole = Buffer.from(await answer.arrayBuffer());
    const zipped = text.has(ending(path));
    const body = zipped ? gzipSync(whole) : whole;
    const headers = Object.fromEntries(answer.headers);
    if (zipped) headers['content-encoding'] = 'gzip';
    headers['content-length'] = String(body.length);
    count(path, body.length);
    response.writeHead(answer.status, headers).end(body);
  };
  const server = createServer((request, response) => {
    pass(request, response).catch((reason) => response.destroy(reason));
  });
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      const port = address && typeof address === 'object' ? address.port : 0;
      const close = () => (server.closeAllConnections(), server.close());
      resolve({ url: `http://localhost:${port}/`, close });
    });
  });
}
