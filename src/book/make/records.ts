import { keyOf } from '../fixtures.ts';
import { recordsOf, type Record } from '../records.ts';
import type { Document, Id, Means, ShelfItem } from '../types.ts';
import { words } from '../../words/words.ts';
import { freeName } from './freeName.ts';
import { made, refused, type Made } from './made.ts';

/** A set-up that is to be kept; its name may still be taken. */
export type NewRecord = Omit<Record, 'id'>;

/** Puts a record on the shelf. Nothing ever changes it; a name that is taken gets a number. */
export function addRecord(
  document: Document,
  means: Pick<Means, 'newId'>,
  record: NewRecord,
): Made & { readonly name: string } {
  const taken = new Set(recordsOf(document).map(({ name }) => keyOf(name)));
  const name = freeName(record.name, taken, words.repeat.one);
  const item: ShelfItem = { ...record, name, id: means.newId() };
  const steps = [{ kind: 'setShelf', shelf: 'records', items: [{ id: item.id, item }] }] as const;
  return { ...made(words.repeat.recordOne(name), steps), name };
}

export function removeRecord(document: Document, id: Id): Made {
  const record = recordsOf(document).find((one) => one.id === id);
  if (!record) return refused(words.repeat.gone);
  return made(words.repeat.removeOne(record.name), [
    { kind: 'setShelf', shelf: 'records', items: [{ id, item: null }] },
  ]);
}
