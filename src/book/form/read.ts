import * as v from 'valibot';
import type { Document, Refusal } from '../types.ts';
import type { BookJson } from './bookschema.ts';
import { bookSchema } from './bookschema.ts';
import { built } from './built.ts';
import { sentenceFor } from './faults.ts';
import { faultOfJson } from './openjson.ts';
import { orRefused, Unreadable } from './unreadable.ts';
import type { Migration } from './version.ts';
import { form, migrations as ownMigrations, version } from './version.ts';
import { words } from '../../words/words.ts';

type Read = { readonly ok: true; readonly document: Document } | Refusal;

/**
 * Reads the text of a file: the whole book, or one sentence that says what is wrong and where.
 * Older versions are brought forward first; a newer one is refused.
 */
export const readBook = (
  text: string,
  migrations: Readonly<Record<number, Migration>> = ownMigrations,
): Read => orRefused(() => ({ ok: true, document: built(checked(text, migrations)) }));

/**
 * The same in two parts, for two threads: what comes out of the first can be sent, and the second
 * is sure of it and does not look it over again.
 */
export const checkBook = (text: string): { readonly ok: true; readonly json: BookJson } | Refusal =>
  orRefused(() => {
    const json = checked(text, ownMigrations);
    built(json);
    return { ok: true, json };
  });
export const bookFrom = (json: BookJson): Read =>
  orRefused(() => ({ ok: true, document: built(json) }));

function checked(text: string, migrations: Readonly<Record<number, Migration>>): BookJson {
  const json = migrated(parsed(text), migrations);
  const result = v.safeParse(bookSchema, json, { abortEarly: true });
  if (!result.success) throw new Unreadable(sentenceFor(result.issues[0], json));
  return result.output;
}

function parsed(text: string): Record<string, unknown> {
  const ours = text.slice(0, 200).includes(`"${form}"`);
  let json: unknown;
  try {
    json = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch {
    throw new Unreadable(ours ? words.bookFile.cutShort : words.bookFile.notABook);
  }
  if (typeof json !== 'object' || json === null || Reflect.get(json, 'form') !== form)
    throw new Unreadable(words.bookFile.notABook);
  // Only texts that mention such a key are walked through: that is rare, and a walk takes time.
  const fault = /proto|constructor|\\u/.test(text) ? faultOfJson(json) : undefined;
  if (fault !== undefined) throw new Unreadable(words.bookFile.damagedBy(fault));
  return Object.fromEntries(Object.entries(json));
}

function migrated(
  json: Record<string, unknown>,
  migrations: Readonly<Record<number, Migration>>,
): Record<string, unknown> {
  const written = json['version'];
  if (typeof written !== 'number' || !Number.isInteger(written) || written < 0)
    throw new Unreadable(words.bookFile.noVersion);
  if (written > version) throw new Unreadable(words.bookFile.newer(written, version));
  let current = json;
  for (let from = written; from < version; from++) {
    const migrate = migrations[from];
    if (!migrate) throw new Unreadable(words.bookFile.formUnknown(from));
    current = { ...migrate(current), version: from + 1 };
  }
  return current;
}
