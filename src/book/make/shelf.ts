import { keyOf } from '../fixtures.ts';
import type { Document, Id, Means, ShelfItem, ShelfName } from '../types.ts';
import { freeName, longestName } from './freeName.ts';
import { made, refused, type Made } from './made.ts';
import { words } from '../../words/words.ts';

/** What is said of the things that lie on a shelf. */
export interface ShelfWords {
  /** A name for one that has none. */
  readonly one: string;
  readonly none: string;
  readonly gone: string;
  readonly unnamed: string;
  addOne(name: string): string;
  addSome(count: number): string;
  there(name: string): string;
  renameOne(before: string, after: string): string;
  removeOne(name: string): string;
}

/** A shelf of named things: how they are read from the book, and what is said of them. */
export interface Shelving {
  readonly shelf: ShelfName;
  all(document: Pick<Document, 'shelf'>): readonly ShelfItem[];
  readonly said: ShelfWords;
}

interface Named {
  readonly name: string;
}

/** Puts things on the shelf. A name that is taken gets a number behind it. */
export function addTo(
  { shelf, all, said }: Shelving,
  document: Document,
  means: Pick<Means, 'newId'>,
  things: readonly (Named & Omit<ShelfItem, 'id'>)[],
): Made {
  const [first] = things;
  if (!first) return refused(said.none);
  const taken = new Set(all(document).map(nameKey));
  const items = things.map((thing): ShelfItem => {
    const name = freeName(thing.name, taken, said.one);
    taken.add(keyOf(name));
    return { ...thing, name, id: means.newId() };
  });
  const label = items.length === 1 ? said.addOne(first.name) : said.addSome(items.length);
  return made(label, [
    { kind: 'setShelf', shelf, items: items.map((item) => ({ id: item.id, item })) },
  ]);
}

/** Another name. Formulas that look the old one up say that it is gone. */
export function renameOn(
  { shelf, all, said }: Shelving,
  document: Document,
  id: Id,
  name: string,
): Made {
  const thing = all(document).find((one) => one.id === id);
  if (!thing) return refused(said.gone);
  const wanted = name.trim();
  if (wanted === '') return refused(said.unnamed);
  if (wanted.length > longestName) return refused(words.book.nameTooLong(longestName));
  const other = all(document).find((one) => nameKey(one) === keyOf(wanted));
  if (other && other.id !== id) return refused(said.there(nameOf(other)));
  const label = said.renameOne(nameOf(thing), wanted);
  if (wanted === thing['name']) return made(label, []);
  return made(label, [
    { kind: 'setShelf', shelf, items: [{ id, item: { ...thing, name: wanted } }] },
  ]);
}

export function removeFrom({ shelf, all, said }: Shelving, document: Document, id: Id): Made {
  const thing = all(document).find((one) => one.id === id);
  if (!thing) return refused(said.gone);
  return made(said.removeOne(nameOf(thing)), [
    { kind: 'setShelf', shelf, items: [{ id, item: null }] },
  ]);
}

const nameOf = ({ name }: ShelfItem): string => String(name);
const nameKey = (item: ShelfItem): string => keyOf(nameOf(item));
