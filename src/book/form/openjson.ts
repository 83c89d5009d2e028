import type { Json } from '../types.ts';
import { words } from '../../words/words.ts';

const deepest = 24;
const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/** Why a value is not plain JSON that may be kept; walked without recursion, however deep it is. */
export function faultOfJson(value: unknown): string | undefined {
  const waiting: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { value: each, depth } = next;
    if (depth > deepest) return words.bookFile.nests(deepest);
    if (typeof each === 'object' && each !== null) {
      for (const key of Object.keys(each))
        if (forbidden.has(key)) return words.bookFile.strangeKey(key);
      for (const inner of Object.values(each)) waiting.push({ value: inner, depth: depth + 1 });
    } else if (!isPlain(each)) return words.bookFile.notJson;
  }
  return undefined;
}

function isPlain(value: unknown): boolean {
  return (
    value === null ||
    typeof value === 'string' ||
    typeof value === 'boolean' ||
    (typeof value === 'number' && Number.isFinite(value))
  );
}

/** The same value with the keys of every object in order. */
export function inKeyOrder(value: Json): Json {
  if (Array.isArray(value)) return (value as readonly Json[]).map(inKeyOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value as { readonly [key: string]: Json });
  return Object.fromEntries(
    entries
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, inKeyOrder(inner)]),
  );
}
