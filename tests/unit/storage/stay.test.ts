import { expect, it, vi } from 'vitest';

/** The module remembers that it asked: each test takes a new one. */
async function fresh() {
  vi.resetModules();
  return (await import('../../../src/storage/stay.ts')).askToStay;
}

it('the browser is asked once to keep the books', async () => {
  const askToStay = await fresh();
  const storage = { persisted: vi.fn(async () => false), persist: vi.fn(async () => false) };
  await askToStay(storage);
  await askToStay(storage);
  expect(storage.persist).toHaveBeenCalledTimes(1);
});

it('a browser that keeps them anyway is not asked', async () => {
  const askToStay = await fresh();
  const storage = { persisted: vi.fn(async () => true), persist: vi.fn(async () => true) };
  await askToStay(storage);
  expect(storage.persist).not.toHaveBeenCalled();
});

it('one that cannot be asked is left in peace', async () => {
  const askToStay = await fresh();
  await expect(askToStay(undefined)).resolves.toBeUndefined();
  const refusing = {
    persisted: () => Promise.reject(new DOMException('no', 'SecurityError')),
    persist: vi.fn(async () => true),
  };
  await expect(askToStay(refusing)).resolves.toBeUndefined();
});
