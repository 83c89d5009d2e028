import type { Document } from '../types.ts';
import { Draft } from './draft.ts';

/** The inside of a document that this folder made: every document is. */
export function draftOf(document: Document): Draft {
  if (document instanceof Draft) return document;
  throw new TypeError('Only documents made by newDocument or readBook can be opened.');
}
