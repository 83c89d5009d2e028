import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { headerPolicy } from '../../../src/tools/policy.mjs';
import { serve } from '../../../src/tools/serve.mjs';

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halfstop-serve-'));
  await mkdir(join(folder, 'site/assets'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), 'secret');
  await writeFile(join(folder, 'site/index.html'), '<p>The loft</p>');
  await writeFile(join(folder, 'site/assets/main.js'), 'export {}');
  await writeFile(join(folder, 'site/.hidden'), 'hidden');
  await symlink(join(folder, 'secret.txt'), join(folder, 'site/link.txt'));
  server = await serve({ folder: join(folder, 'site') });
});

afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true });
});

/** Sends the path as it stands; fetch would tidy it first. */
function get(
  path: string,
  method = 'GET',
): Promise<{ status: number; type: string; text: string }> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port: server.port, path, method }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => (text += part));
      response.on('end', () => {
        const type = response.headers['content-type'] ?? '';
        resolve({ status: response.statusCode ?? 0, type, text });
      });
    });
    sent.on('error', reject).end();
  });
}

test('a folder is answered with its page', async () => {
  expect(await get('/')).toEqual({
    status: 200,
    type: 'text/html; charset=utf-8',
    text: '<p>The loft</p>',
  });
});

test('a script has the type without which a browser refuses it', async () => {
  expect((await get('/assets/main.js?x=1')).type).toBe('text/javascript; charset=utf-8');
});

test('the policy goes out with every answer', async () => {
  for (const path of ['', 'nothing-here']) {
    const { headers } = await fetch(server.url + path);
    expect(headers.get('content-security-policy')).toBe(headerPolicy);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  }
  expect(headerPolicy).toContain("default-src 'none'");
  expect(headerPolicy).not.toContain('unsafe');
});

test.each([
  ['/../secret.txt', 'a path upwards'],
  ['/assets/../../secret.txt', 'a path upwards from a folder'],
  ['/%2e%2e/secret.txt', 'an encoded path upwards'],
  ['/..%2fsecret.txt', 'an encoded slash'],
  ['/..%5csecret.txt', 'a backslash'],
  ['/link.txt', 'a link to outside'],
  ['/.hidden', 'a hidden file'],
  ['/index.html%00', 'a zero byte'],
  ['/%', 'a broken escape'],
  ['/assets', 'a folder without its slash'],
])('%s is not found: %s', async (path) => {
  const { status, text } = await get(path);
  expect(status).toBe(404);
  expect(text).toBe('Not found.\n');
});

test('nothing can be sent to it', async () => {
  expect((await get('/', 'POST')).status).toBe(405);
});

test('a taken port gives another one', async () => {
  const second = await serve({ folder: join(folder, 'site'), port: server.port });
  try {
    expect(second.port).not.toBe(server.port);
    expect(await (await fetch(second.url)).text()).toBe('<p>The loft</p>');
  } finally {
    await second.close();
  }
});
