import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { launchChromium } from './chromium.mjs';
import { root } from './root.mjs';

/*
 * Draws the icons that a desk or a home screen shows, from public/icon.svg. Where the system cuts
 * the shape itself (`maskable`), the ground goes to the edge and the sign keeps to the middle.
 */

const svg = readFileSync(join(root, 'public/icon.svg'), 'utf8');
const toTheEdge = svg
  .replace(/ rx="\d+"/, '')
  .replace(/(<rect[^>]*>)/, '$1<g transform="translate(16 16) scale(0.76) translate(-16 -16)">')
  .replace('</svg>', '</g></svg>');

const icons = [
  { name: 'icon-192.png', size: 192, drawing: svg },
  { name: 'icon-512.png', size: 512, drawing: svg },
  { name: 'icon-maskable-512.png', size: 512, drawing: toTheEdge },
  { name: 'icon-touch-180.png', size: 180, drawing: toTheEdge },
];

const browser = await launchChromium();
for (const { name, size, drawing } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const image = `data:image/svg+xml;base64,${Buffer.from(drawing).toString('base64')}`;
  await page.setContent(
    `<style>body{margin:0;background:none}img{display:block;width:100vw}</style><img src="${image}">`,
  );
  const picture = await page.locator('img').screenshot({ omitBackground: true });
  writeFileSync(join(root, 'public', name), picture);
  await page.close();
}
await browser.close();
