import * as v from 'valibot';
import { recordSchema } from '../records.ts';
import type { NewRecord } from '../make/records.ts';
import type { Json, Refusal } from '../types.ts';
import { words } from '../../words/words.ts';
import { jpeg } from './bookschema.ts';
import { faultOfJson, inKeyOrder } from './openjson.ts';
import type { PhotoFile } from './photos.ts';
import { photoHash } from './schema.ts';
import { form as bookForm } from './version.ts';

const form = 'halfstop record';
const version = 1;
/** A record with fifty photos and room to spare. */
export const mostCharacters = 100_000_000;

const { id: _, ...entries } = recordSchema.entries;

/** The file form of one record, version 1: what the shelf keeps but its id, and its pictures. */
const recordFile = v.strictObject({
  form: v.literal(form),
  version: v.literal(version),
  record: v.strictObject(entries),
  photos: v.exactOptional(
    v.pipe(v.array(v.strictObject({ hash: photoHash, jpeg })), v.maxLength(500)),
  ),
});

/** A record as the text of a file of its own; ids are the book’s and stay there. */
export function writeRecord(record: NewRecord, photos: readonly PhotoFile[] = []): string {
  const entries = Object.entries(record).filter(([key]) => key !== 'id');
  const file = {
    form,
    version,
    record: Object.fromEntries(entries),
    ...(photos.length > 0 && { photos }),
  };
  return `${JSON.stringify(inKeyOrder(file as unknown as Json), null, 1)}\n`;
}

/** Reads such a file: the whole record, or why nothing was taken. */
export function readRecord(
  text: string,
):
  | { readonly ok: true; readonly record: NewRecord; readonly photos: readonly PhotoFile[] }
  | Refusal {
  if (text.length > mostCharacters) return refused(words.repeat.fileLarge);
  let json: unknown;
  try {
    json = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch {
    const ours = text.slice(0, 200).includes(`"${form}"`);
    return refused(ours ? words.repeat.fileCut : words.repeat.fileNone);
  }
  const said = typeof json === 'object' && json !== null ? Reflect.get(json, 'form') : undefined;
  if (said === bookForm) return refused(words.repeat.fileBook);
  if (said !== form) return refused(words.repeat.fileNone);
  if (Number(Reflect.get(json as object, 'version')) > version)
    return refused(words.repeat.fileNewer);
  const fault = faultOfJson(json);
  if (fault !== undefined) return refused(words.bookFile.damagedBy(fault));
  const parsed = v.safeParse(recordFile, json, { abortEarly: true });
  if (parsed.success)
    return { ok: true, record: parsed.output.record, photos: parsed.output.photos ?? [] };
  const where = (parsed.issues[0].path ?? []).map(({ key }) => String(key)).join(' / ');
  return refused(words.repeat.fileFault(where));
}

const refused = (reason: string): Refusal => ({ ok: false, reason });
