import type { Page } from 'playwright-core';
import { begin, type SheetHand } from './sheet.ts';

/** A rig and its points in the sail loft, with the fixtures of the sample book. Metres. */
export const rigAndPoints = [
  'Fixture\tx\ty\tz\taim x\taim y\taim z\toutput\tloss\troll',
  'Frame 120 × 120\t-2\t-1.6\t2.2\t0\t0.4\t1.6\t1\t0\t0',
  'Fresnel 650 at flood\t2.6\t3.2\t3.2\t0.2\t0.4\t1.7\t0.6\t1\t0',
  'Fresnel 650 at spot\t-3.2\t3.4\t3\t1.2\t3.6\t1.2\t0.3\t1\t0',
  'Tube 120\t2.9\t-0.6\t1.4\t0.3\t0.4\t1.5\t0.5\t0\t90',
  'Small profile 19°\t3.6\t0.5\t3.4\t=0.9*B13\t4.2\t1.4\t0.2\t0\t0',
  '',
  'Point\tx\ty\tz\tazimuth\ttilt',
  'Key side of face\t0\t0.4\t1.6\t220\t0',
  'Fill side of face\t0.15\t0.45\t1.6\t120\t0',
  'Rope bench\t1.3\t3.7\t1.1\t180\t30',
  'Canvas left\t-2\t4.3\t1.5\t180\t0',
  'Canvas right\t2\t4.3\t1.5\t180\t0',
].join('\n');

/** The same with a frame before the first lamp that faces a free place, and the tube aimed at another. */
export const rigWithFrame = rigAndPoints
  .replace(
    '\troll',
    '\troll\twidth\theight\tdistance\tthrough\tbounce\ttowards x\ttowards y\ttowards z',
  )
  .replace('1.6\t1\t0\t0', '1.6\t1\t0\t0\t1.2\t1.2\t0.8\t0.25\t\t0.8\t-0.9\t1.6')
  .replace('0.3\t0.4\t1.5\t0.5', '1.8\t-1.2\t1.5\t0.5');

/** The sample book with a blank sheet in which they stand from A1 on, and a figure of a kind under it. */
export async function openSet(
  page: Page,
  kind: RegExp,
  rig: string = rigAndPoints,
): Promise<SheetHand> {
  await page.evaluate(() => {
    localStorage.setItem('halfstop-figures', 'tall');
  });
  await page.reload();
  const sheet = await begin(page, 'sample book');
  await find(page, 'Add a sheet');
  await page.getByRole('button', { name: /^Blank/ }).click();
  await sheet.paste('A1', rig);
  await addFigure(page, kind);
  await page.locator('.figure svg[role=img]').waitFor();
  return sheet;
}

/** A figure by the dialog: of the cells that it finds itself, or of those that are written. */
export async function addFigure(
  page: Page,
  kind: RegExp,
  cells: Readonly<Record<string, string>> = {},
): Promise<void> {
  await find(page, 'Add a figure');
  await page.getByRole('radio', { name: kind }).check();
  for (const [input, address] of Object.entries(cells))
    await page.getByRole('textbox', { name: input, exact: true }).fill(address);
  await page.getByRole('button', { name: 'Add the figure', exact: true }).click();
}

async function find(page: Page, command: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(command);
  await page.keyboard.press('Enter');
}
