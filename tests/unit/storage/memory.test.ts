import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';
import { remembering, type Memory } from '../../../src/storage/memory.ts';
import type { BookStore } from '../../../src/storage/store.ts';

let count = 0;
const fresh = () => openDatabase(`memory-${String(count++)}`);
const pages = { snapshot: { text: 'snapshot', remains: null }, journal: [] };
const book = (id: string, title = id) => ({
  id,
  title,
  changed: '2026-03-02T14:02:00Z',
  size: 1,
});

function notebook(): Memory & { clear(): void; text: string | null } {
  return {
    text: null,
    getItem() {
      return this.text;
    },
    setItem(_, text) {
      this.text = text;
    },
    clear() {
      this.text = null;
    },
  };
}

/** As a browser that is short of room does. */
const clear = async (store: BookStore) => {
  for (const { id } of await store.list()) await store.remove(id);
};

describe('books that the browser has cleared', () => {
  it('are missed by title, in the same page and by the next one', async () => {
    const [store, memory] = [fresh(), notebook()];
    const here = remembering(store, memory);
    await here.begin(book('loft', 'Sail loft'), pages);
    await here.begin(book('shed', 'Boat shed'), pages);
    expect(await here.missing()).toEqual([]);
    await clear(store);
    expect(await here.missing()).toEqual(['Sail loft', 'Boat shed']);
    expect(await remembering(store, memory).missing()).toEqual(['Sail loft', 'Boat shed']);
  });

  it('are missed by the page that knew them when the memory is cleared too', async () => {
    const [store, memory] = [fresh(), notebook()];
    const here = remembering(store, memory);
    await here.begin(book('loft'), pages);
    await clear(store);
    memory.clear();
    expect(await here.missing()).toEqual(['loft']);
    expect(await remembering(store, memory).missing(), 'the next page cannot know').toEqual([]);
  });

  it('are not missed once they are back, or once nobody wants to hear of them', async () => {
    const [store, memory] = [fresh(), notebook()];
    const here = remembering(store, memory);
    await here.begin(book('loft'), pages);
    await here.begin(book('shed'), pages);
    await clear(store);
    await store.begin(book('loft'), pages);
    expect(await here.missing()).toEqual(['shed']);
    await here.forgetMissing();
    expect(await here.missing()).toEqual([]);
    await clear(store);
    expect(await here.missing(), 'the one that came back is still known').toEqual(['loft']);
  });

  it('are told from those that were removed, here or in another tab', async () => {
    const [store, memory] = [fresh(), notebook()];
    const [here, elsewhere] = [remembering(store, memory), remembering(store, memory)];
    await here.begin(book('loft'), pages);
    await elsewhere.begin(book('shed'), pages);
    await here.remove('shed');
    await elsewhere.remove('loft');
    expect(await here.missing()).toEqual([]);
    expect(await elsewhere.missing()).toEqual([]);
  });

  it('are not missed while another tab is just removing or beginning them', async () => {
    const [store, memory] = [fresh(), notebook()];
    const elsewhere = remembering(store, memory);
    await elsewhere.begin(book('loft'), pages);
    const between = { ...store, list: () => busy().then(() => store.list()) };
    const busy = async () => {
      await elsewhere.remove('loft');
      await elsewhere.begin(book('shed'), pages);
    };
    expect(await remembering(between, memory).missing()).toEqual([]);
  });

  it('are known from lists too, whoever kept them', async () => {
    const [store, memory] = [fresh(), notebook()];
    await store.begin(book('loft', 'Sail loft'), pages);
    const here = remembering(store, memory);
    await here.list();
    await clear(store);
    expect(await here.missing()).toEqual(['Sail loft']);
  });

  it.each([
    ['none', undefined],
    ['one that is refused', refused()],
    ['one with something else in it', { ...notebook(), text: '[3' }],
  ])('are missed within the page where the memory is %s', async (_, memory) => {
    const store = fresh();
    const here = remembering(store, memory);
    await here.begin(book('loft'), pages);
    await clear(store);
    expect(await here.missing()).toEqual(['loft']);
  });
});

function refused(): Memory {
  const refuse = () => {
    throw new DOMException('denied', 'SecurityError');
  };
  return { getItem: refuse, setItem: refuse };
}
