import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it, test } from 'vitest';
import { axeFaults } from '../support/axe.ts';
import { openApp, type OpenOptions } from '../support/browser.ts';
import { begin, handOn, ready } from '../support/sheet.ts';

// The loft walked with a phone in the hand. Verdicts are those worked out by hand in
// templates/harbour-hours/expected.ts.

const phone: OpenOptions = { viewport: { width: 390, height: 844 }, touch: true, mobile: true };

/** What a thumb does in Walk, and what the eye reads there. */
function thumbOn(page: Page) {
  const walk = page.locator('dialog.walk');
  return {
    walk,
    point: walk.locator('h1'),
    verdict: walk.locator('.verdict'),
    main: walk.locator('.onwards .main'),
    told: walk.locator('p.unseen[role=status]'),
    entry: walk.locator('.entry-now'),
    key: (name: string) => walk.getByRole('button', { name, exact: true }),
    async keys(...names: readonly string[]) {
      for (const name of names) await walk.getByRole('button', { name, exact: true }).tap();
    },
    async goTo(name: string) {
      await walk.locator('.count').click();
      await walk.locator('.readings button', { hasText: name }).first().click();
    },
    /** Fractions are set from figures: `f/1.4 1/3`. */
    figure: async () =>
      (await walk.locator('.display .figure').innerText()).replace(/\s+/g, ' ').trim(),
  };
}

async function walkOf(page: Page, card = 'Harbour Hours') {
  await begin(page, card);
  await page.locator('.walk-start:visible').click();
  const thumb = thumbOn(page);
  await thumb.walk.waitFor();
  return thumb;
}

const says = (read: () => Promise<string>) => expect.poll(read);

describe('the loft, walked with a thumb', () => {
  it('comes to its verdicts on a phone without network', async () => {
    const { page, context } = await openApp({ ...phone, worker: true });
    // The app has been here before: what it needs lies in the browser.
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await page.reload();
    await begin(page, 'Key, fill and background');
    await context.setOffline(true);
    await page.getByRole('button', { name: 'Walk through the readings' }).tap();
    const thumb = thumbOn(page);
    await says(() => thumb.point.innerText()).toBe('Key side of face');
    await thumb.keys('f/2.8');
    await says(() => thumb.main.innerText()).toBe('Keep f/2.8');
    await thumb.main.tap();
    await thumb.main.tap();
    await says(() => thumb.point.innerText()).toBe('Fill side of face');
    expect(await thumb.walk.locator('.wanted').innerText()).toContain('wanted f/1.4');
    await thumb.keys('f/2', '+ 1/3');
    await thumb.main.tap();
    await says(() => thumb.verdict.innerText()).toMatch(/1\s*1\/3 stops over/);
    await says(() => thumb.told.innerText()).toMatch(
      /^Fill side of face: f\/2 1\/3, 1 1\/3 stops over/,
    );
    await thumb.keys('f/1.4', '+ 1/3');
    await thumb.main.tap();
    await says(() => thumb.verdict.innerText()).toBe('agrees');
    expect(await thumb.main.innerText()).toBe('Next: Back light on shoulder');
    await thumb.main.tap();
    await thumb.main.tap();
    expect(await thumb.walk.locator('.count').innerText()).toContain('1 skipped');
    // The phone slept and threw the page away.
    const there = await thumb.point.innerText();
    await page.reload();
    await ready(page);
    await says(() => thumb.point.innerText()).toBe(there);
    expect(await thumb.walk.locator('.count').innerText()).toContain('1 skipped');
    await thumb.walk.getByRole('button', { name: 'Leave Walk' }).tap();
    const sheet = handOn(page);
    await says(() => sheet.read('F13')).toBe('agrees');
    expect(await sheet.read('C13')).toBe('f/1.4 1/3');
  });

  it('reads lux, kelvin and tint by their own keys', async () => {
    const { page } = await openApp(phone);
    const thumb = await walkOf(page);
    await thumb.goTo('Rope bench');
    expect(await thumb.figure()).toBe('85 lx');
    await thumb.keys('6', '3');
    await thumb.main.tap();
    await says(() => thumb.verdict.innerText()).toBe('agrees');
    expect(await thumb.walk.locator('.now').innerText()).toMatch(/metered at \d\d:\d\d\n/);
    // The meter is said once, and every reading after remembers it.
    await thumb.walk.locator('.count').click();
    await thumb.walk.getByLabel('Meter in use').fill('Meter A');
    await thumb.walk.getByLabel('Meter in use').press('Tab');
    await thumb.walk.locator('.readings button', { hasText: 'Fill colour' }).first().click();
    await thumb.keys('3', '1', '0', '0');
    await thumb.main.tap();
    // 10⁶ / 3100 − 10⁶ / 3200 = 10.1 mired; the tint of the walk before was 0.0068.
    await says(() => thumb.verdict.innerText()).toBe('10 mired too warm, green by 0.007');
    expect(await thumb.walk.locator('.now').innerText()).toMatch(/metered at .* with Meter A/);
    expect(await thumb.main.innerText()).toBe('Next: tint');
    await thumb.main.tap();
    await thumb.keys('0', 'Decimal sign', '0', '0', '2', 'Plus or minus');
    await thumb.main.tap();
    await says(thumb.figure).toBe('−0.002');
  });

  it('says why a reading was refused and keeps what was typed', async () => {
    const { page } = await openApp(phone);
    const thumb = await walkOf(page);
    await thumb.entry.focus();
    await page.keyboard.type('3 m');
    await page.keyboard.press('Enter');
    await says(() => thumb.walk.getByRole('alert').innerText()).toContain('3 m is none of these');
    expect(await thumb.figure()).toBe('3 m');
  });
});

describe('the place in the walk', () => {
  it('and what was half entered are there again after a reload', async () => {
    const { page } = await openApp(phone);
    let thumb = await walkOf(page);
    await thumb.goTo('Canvas left');
    await thumb.keys('f/2', '+ 2/3');
    await page.reload();
    await ready(page);
    thumb = thumbOn(page);
    await says(() => thumb.point.innerText()).toBe('Canvas left');
    expect(await thumb.figure()).toBe('f/2 2/3');
    await thumb.main.tap();
    await says(() => thumb.verdict.innerText()).toMatch(/over/);
  });

  it('is where the sheet is when one leaves', async () => {
    const { page } = await openApp(phone);
    const thumb = await walkOf(page);
    await thumb.goTo('Canvas right');
    await page.keyboard.press('Escape');
    await expect.poll(() => thumb.walk.count()).toBe(0);
    await says(() => page.locator('.name-box input').inputValue()).toBe('C16');
  });
});

describe('with a keyboard', () => {
  it('a reading is typed as it is written, Enter keeps it and goes on, undo names the point', async () => {
    const { page } = await openApp();
    await begin(page, 'Harbour Hours');
    await page.keyboard.press('F8');
    const thumb = thumbOn(page);
    await says(() => thumb.point.innerText()).toBe('Key side of face');
    await page.keyboard.press('ArrowDown');
    await says(() => thumb.point.innerText()).toBe('Fill side of face');
    await page.keyboard.type('f/1.4');
    await page.keyboard.press('Enter');
    await says(() => thumb.verdict.innerText()).toBe('agrees');
    await page.keyboard.type('2 ⅓');
    await page.keyboard.press('Enter');
    await says(() => thumb.verdict.innerText()).toMatch(/1\s*1\/3 stops over/);
    expect(await thumb.key('Undo: Walk: Fill side of face').count()).toBe(1);
    await page.keyboard.press('Control+z');
    await says(() => thumb.verdict.innerText()).toBe('agrees');
    await page.keyboard.press('Enter');
    await says(() => thumb.point.innerText()).toBe('Back light on shoulder');
    await page.keyboard.press('ArrowLeft');
    await says(() => thumb.point.innerText()).toBe('Fill side of face');
    await page.keyboard.press('Escape');
    await expect.poll(() => thumb.walk.count()).toBe(0);
    await says(() => page.locator('.name-box input').inputValue()).toBe('C13');
  });

  it('a point is added, noted and said to be unreadable', async () => {
    const { page } = await openApp();
    const thumb = await walkOf(page);
    await thumb.walk.getByRole('textbox', { name: 'Name of a point to add' }).fill('Lantern');
    await page.keyboard.press('Enter');
    await says(() => thumb.point.innerText()).toBe('Lantern');
    await thumb.key('Note on this point').click();
    await page.keyboard.type('hangs low');
    await thumb.key('Keep the note').click();
    await says(() => thumb.walk.locator('.note-now').innerText()).toBe('hangs low');
    await thumb.key('not readable').click();
    await thumb.goTo('Lantern');
    await says(() => thumb.walk.locator('.note-now').innerText()).toBe('hangs low, not readable');
  });

  it('a sheet without readings says so', async () => {
    const { page } = await openApp();
    await begin(page, 'Tungsten dimming');
    await page.keyboard.press('F8');
    await says(() => page.locator('.notice').innerText()).toContain('has no readings');
  });
});

describe('a photo of a point', () => {
  const icon = 'public/icon-512.png';

  it('is scaled, shown in Walk and in the Slip, undone by its point, and goes along in the file', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 800 }, touch: true });
    const thumb = await walkOf(page);
    await thumb.goTo('Canvas left');
    await thumb.walk.getByLabel('Photo of this point').setInputFiles(icon);
    const image = thumb.walk.locator('.photos img');
    await image.waitFor();
    expect(await image.getAttribute('alt')).toBe('icon-512.png');
    await expect.poll(() => image.evaluate((one: HTMLImageElement) => one.naturalWidth)).toBe(512);
    await thumb.key('Undo: Walk: photo of Canvas left').click();
    await expect.poll(() => image.count()).toBe(0);
    await thumb.walk.locator('.entry-now').focus();
    await page.keyboard.press('Control+Shift+Z');
    await image.waitFor();
    await page.keyboard.press('Escape');
    await page.locator('aside.slip .photos img').waitFor();
    const saving = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    const path = await (await saving).path();
    const file = JSON.parse(readFileSync(path, 'utf8')) as {
      photos: { hash: string; jpeg: string }[];
    };
    expect(file.photos).toHaveLength(1);
    const bytes = Buffer.from(file.photos[0]?.jpeg ?? '', 'base64');
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(file.photos[0]?.hash);
    // APP1 is where cameras write the place; a picture drawn anew has none.
    expect(bytes.includes(Buffer.from('Exif'))).toBe(false);
  });

  it('is still there after a reload, and large pictures are made smaller', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 800 }, touch: true });
    const thumb = await walkOf(page);
    const large = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(3200, 1000);
      canvas.getContext('2d')?.fillRect(0, 0, 100, 100);
      const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer());
      return Array.from(bytes);
    });
    await thumb.walk.getByLabel('Photo of this point').setInputFiles({
      name: 'loft.png',
      mimeType: 'image/png',
      buffer: Buffer.from(large),
    });
    await thumb.walk.locator('.photos img').waitFor();
    await page.reload();
    await ready(page);
    const image = thumbOn(page).walk.locator('.photos img');
    await image.waitFor();
    await expect
      .poll(() => image.evaluate((one: HTMLImageElement) => [one.naturalWidth, one.naturalHeight]))
      .toEqual([1600, 500]);
  });

  it('that is no picture is refused with a sentence', async () => {
    const { page } = await openApp({ viewport: { width: 1280, height: 800 }, touch: true });
    const thumb = await walkOf(page);
    await thumb.walk.getByLabel('Photo of this point').setInputFiles({
      name: 'loft.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('no picture'),
    });
    await says(() => thumb.walk.getByRole('alert').innerText()).toContain('not a picture');
    expect(await thumb.walk.locator('.photos').count()).toBe(0);
  });
});

describe('the screen', () => {
  it('is kept lit while one walks and let go when one leaves', async () => {
    const { page } = await openApp({
      ...phone,
      before: () => {
        const count = { asked: 0, released: 0 };
        Object.assign(window, { lit: count });
        Object.defineProperty(navigator, 'wakeLock', {
          value: {
            request: () => {
              count.asked += 1;
              const lock = {
                released: false,
                release: () => Promise.resolve((count.released += 1)),
              };
              // A browser lets go of the lock by itself when the page goes out of sight.
              addEventListener('dark', () => (lock.released = true), { once: true });
              return Promise.resolve(lock);
            },
          },
        });
      },
    });
    const thumb = await walkOf(page);
    const lit = () => page.evaluate(() => Reflect.get(window, 'lit') as unknown);
    await expect.poll(lit).toEqual({ asked: 1, released: 0 });
    const backInSight = () =>
      page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await backInSight();
    expect(await lit()).toEqual({ asked: 1, released: 0 });
    await page.evaluate(() => dispatchEvent(new Event('dark')));
    await backInSight();
    await expect.poll(lit).toEqual({ asked: 2, released: 0 });
    await thumb.walk.getByRole('button', { name: 'Leave Walk' }).tap();
    await expect.poll(lit).toEqual({ asked: 2, released: 1 });
  });

  it('dims for metering and goes back to what it was', async () => {
    const { page } = await openApp({ ...phone, theme: 'light' });
    const thumb = await walkOf(page);
    const ground = () => thumb.walk.evaluate((box) => getComputedStyle(box).backgroundColor);
    const bright = await ground();
    await thumb.key('Dim for metering').tap();
    expect(await ground()).toBe('rgb(8, 5, 3)');
    await thumb.key('Dim for metering').tap();
    expect(await ground()).toBe(bright);
  });

  test.each(['dark', 'light', 'metering'] as const)(
    'has nothing serious for axe, %s',
    async (theme) => {
      const { page } = await openApp({ ...phone, theme: theme === 'light' ? 'light' : 'dark' });
      const thumb = await walkOf(page);
      if (theme === 'metering') await thumb.key('Dim for metering').tap();
      for (const panel of ['point', 'list']) {
        if (panel === 'list') await thumb.walk.locator('.count').tap();
        expect(await axeFaults(page, 'dialog.walk', 'serious')).toEqual([]);
      }
    },
  );

  test.each([
    [360, 740],
    [390, 844],
    [820, 1180],
    [1280, 800],
  ])('has targets of 44 pixels and no sideways scroll at %i × %i', async (width, height) => {
    const { page } = await openApp({ ...phone, viewport: { width, height } });
    const thumb = await walkOf(page);
    const small = await thumb.walk
      .locator('button:visible, .switch label:visible')
      .evaluateAll((all) =>
        all
          .map((one) => ({ box: one.getBoundingClientRect(), says: one.textContent?.trim() }))
          .filter(({ box }) => box.width < 44 || box.height < 44)
          .map(({ box, says }) => [says, Math.round(box.width), Math.round(box.height)]),
      );
    expect(small).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
  });
});
