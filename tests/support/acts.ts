import type { Page } from 'playwright-core';
import type { Random } from '../fuzz/book/random.ts';
import { addressAt } from '../../src/book/look.ts';
import { handOn, ready } from './sheet.ts';

/** One thing that a person does with the open book. */
export interface Act {
  readonly name: string;
  /** How often it is done, against the others. */
  readonly weight: number;
  run(page: Page, random: Random): Promise<void>;
}

const entries = [
  ...['f/2.8', 'f/4 1/3', '85 lx', '1200 lx', '11 fc', '3.2 m', '5600 K', '1/50', '24', '0.7'],
  ...['=A1', '=SUM(B2:B9)', '=STOPS(C5,C6)', '=B4*2', '=IF(B5>3,"over","under")', 'a note', '-1'],
];
const panels = [
  ...['Remarks on the book', 'Names of the book', 'Versions of this book', 'Hand-over sheet'],
  ...['Settings of the book', 'Find and replace', 'Export', 'Function reference', 'Keyboard'],
  ...['Fixtures', 'Spectra'],
];

const anywhere = (random: Random) => addressAt({ row: random.below(40), column: random.below(8) });

async function command(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.locator('dialog.finder input').fill(name);
  await page.keyboard.press('Enter');
}

/** Closes what lies over the sheet and ends what is typed, as Escape does. */
export async function backToSheet(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  for (let tries = 0; (await page.locator('dialog[open]').count()) > 0; tries += 1) {
    if (tries > 50) throw new Error('A dialog does not close.');
    await page.keyboard.press('Escape');
  }
}

/** To any cell by its address, or a few steps on. */
async function go(page: Page, random: Random): Promise<void> {
  if (random.chance(0.4)) return handOn(page).go(anywhere(random));
  const way = random.pick(['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']);
  for (let steps = random.below(3); steps >= 0; steps -= 1) await page.keyboard.press(way);
}

async function select(page: Page, random: Random): Promise<void> {
  await go(page, random);
  for (let rows = random.below(4); rows >= 0; rows -= 1)
    await page.keyboard.press('Shift+ArrowDown');
  if (random.chance(0.5)) await page.keyboard.press('Shift+ArrowRight');
}

const pressed = (name: string, weight: number, keys: string, most = 1): Act => ({
  name,
  weight,
  async run(page, random) {
    for (let times = random.below(most); times >= 0; times -= 1) await page.keyboard.press(keys);
  },
});

const onBlock = (name: string, weight: number, keys: string): Act => ({
  name,
  weight,
  async run(page, random) {
    await select(page, random);
    await page.keyboard.press(keys);
  },
});

const onCell = (name: string, weight: number): Act => ({
  name,
  weight,
  async run(page, random) {
    await go(page, random);
    await command(page, name);
  },
});

export const acts: readonly Act[] = [
  {
    name: 'Type',
    weight: 40,
    async run(page, random) {
      await go(page, random);
      await page.keyboard.type(random.pick(entries));
      await page.keyboard.press('Enter');
    },
  },
  pressed('Undo', 10, 'Control+z', 3),
  pressed('Redo', 4, 'Control+y', 2),
  onBlock('Clear', 4, 'Delete'),
  onBlock('Fill down', 3, 'Control+d'),
  {
    name: 'Copy and paste',
    weight: 5,
    async run(page, random) {
      await select(page, random);
      await page.keyboard.press(random.chance(0.7) ? 'Control+c' : 'Control+x');
      await go(page, random);
      await page.keyboard.press('Control+v');
    },
  },
  onCell('Insert rows above', 2),
  onCell('Delete rows', 2),
  onCell('Insert columns to the left', 1),
  onCell('Delete columns', 1),
  onCell('Sort, lowest first', 1),
  onCell('Bold', 2),
  pressed('Next sheet', 6, 'Control+PageDown', 3),
  {
    name: 'Copy the sheet and delete it',
    // Every quarter of an hour, if there is an act every three seconds: undo keeps whole sheets.
    weight: 0.33,
    async run(page, random) {
      await command(page, 'Copy the sheet');
      await go(page, random);
      await page.keyboard.type(random.pick(entries));
      await page.keyboard.press('Enter');
      await backToSheet(page);
      await command(page, 'Delete the sheet');
    },
  },
  {
    name: 'Open a panel',
    weight: 10,
    async run(page, random) {
      await command(page, random.pick(panels));
      await page.locator('dialog[open]:not(.finder)').waitFor();
    },
  },
  pressed('To the figures', 3, 'Control+Alt+f'),
  pressed('To the cells', 3, 'Control+Alt+g'),
  {
    name: 'Walk',
    weight: 3,
    async run(page, random) {
      const start = page.locator('.walk-start:visible');
      // Not every sheet has readings.
      if ((await start.count()) === 0) return;
      await start.click();
      await page.locator('dialog.walk').waitFor();
      for (let points = random.below(4); points >= 0; points -= 1) {
        await page.keyboard.type(random.pick(['2.8', '4', '120']));
        await page.keyboard.press('Enter');
      }
    },
  },
  {
    name: 'Save as a file',
    weight: 2,
    async run(page) {
      const coming = page.waitForEvent('download');
      await page.keyboard.press('Control+s');
      await (await coming).delete();
    },
  },
  ...['Switch lux and footcandles', 'Switch metres and feet', 'Dimmer than dark, for metering'].map(
    (name): Act => ({ name, weight: 1, run: (page) => command(page, name) }),
  ),
  {
    name: 'Leave the book and open it again',
    weight: 1,
    async run(page) {
      await command(page, 'Start page');
      await page.locator('.kept-book').first().click();
      await ready(page);
    },
  },
];

const sum = acts.reduce((all, { weight }) => all + weight, 0);

export function drawn(random: Random): Act {
  let at = random.unit() * sum;
  return acts.find(({ weight }) => (at -= weight) < 0) ?? random.pick(acts);
}
