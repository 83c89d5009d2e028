import { isId } from '../../formula/ids.ts';
import type { Settings, SetSettingsStep, SetShelfStep, SetTitleStep } from '../types.ts';
import type { Doer } from './applied.ts';
import { applied, refuse } from './applied.ts';
import { words } from '../../words/words.ts';

export const setTitle: Doer<SetTitleStep> = (draft, { title }) => {
  const before = draft.title;
  draft.title = title;
  return applied([{ kind: 'setTitle', title: before }], { kind: 'title' });
};

export const setSettings: Doer<SetSettingsStep> = (draft, { settings }) => {
  const before = draft.settings;
  const keys = (Object.keys(settings) as (keyof Settings)[]).toSorted();
  draft.settings = { ...before, ...settings };
  const old = Object.fromEntries(keys.map((key) => [key, before[key]]));
  return applied([{ kind: 'setSettings', settings: old }], { kind: 'settings', keys });
};

export const setShelf: Doer<SetShelfStep> = (draft, { shelf: name, items }) => {
  if (items.some(({ id, item }) => !isId(id) || (item && item.id !== id)))
    return refuse(words.book.strangeItem);
  const shelf = draft.shelf(name);
  const kept = new Map(shelf.items.map((item) => [item.id, item]));
  const before = items.map(({ id }) => ({ id, item: kept.get(id) ?? null }));
  for (const { id, item } of items) {
    if (item) kept.set(id, item);
    else kept.delete(id);
  }
  const inOrder = [...kept.values()].toSorted((a, b) => (a.id < b.id ? -1 : 1));
  draft.putShelf(name, { version: shelf.version, items: inOrder });
  return applied([{ kind: 'setShelf', shelf: name, items: before.toReversed() }], {
    kind: 'shelf',
    shelf: name,
    ids: items.map(({ id }) => id),
  });
};
