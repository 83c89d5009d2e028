import type { Refusal } from '../types.ts';

/** Ends the reading of a book. The message is a sentence for people. */
export class Unreadable extends Error {}

/** What stands in a damaged file may be of any length; nobody reads a sentence that is. */
const longest = 400;
const brief = (sentence: string): string =>
  sentence.length > longest ? `${sentence.slice(0, longest)}….` : sentence;

/** Reads, or says why that cannot be. */
export function orRefused<Found extends { readonly ok: true }>(read: () => Found): Found | Refusal {
  try {
    return read();
  } catch (fault) {
    if (fault instanceof Unreadable) return { ok: false, reason: brief(fault.message) };
    throw fault;
  }
}
