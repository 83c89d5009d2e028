import { expect, test } from 'vitest';
import { openApp } from '../support/browser.ts';
import { begin } from '../support/sheet.ts';

test('a pasted formula that is not known here is the value that came beside it, and that is said', async () => {
  const { page } = await openApp();
  const sheet = await begin(page, 'Blank book');
  await sheet.go('A1');
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', '2\t=NOWHERE(A1)\n=A1*2\tBench');
    clipboardData.setData(
      'text/html',
      '<table><tr><td>2</td><td>4.5</td></tr><tr><td>4</td><td>Bench<img src="/x" onerror="document.title=1"></td></tr></table>',
    );
    const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    (document.activeElement ?? document.body).dispatchEvent(event);
  });
  await page
    .getByText(/^1 formula cannot be worked out here, so the value that came along/)
    .waitFor();
  expect(await sheet.entry('B1')).toBe('4.5');
  expect(await sheet.entry('A2')).toBe('=A1*2');
  expect(await sheet.read('A2')).toBe('4');
  expect(await sheet.read('B2')).toBe('Bench');
  expect(await page.title(), 'nothing of the HTML ran').not.toBe('1');
});
