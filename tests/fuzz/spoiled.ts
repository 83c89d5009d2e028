import { type Chance, pick } from './mutated.ts';

type Json = unknown;

/** What a file made to do harm puts in place of a value. */
const odd: readonly (() => Json)[] = [
  ...[null, true, -1, 1e308, -0.5, 4294967296, '', ' ', '__proto__', '=A1', '=Walk!A1:B2'].map(
    (value) => () => value,
  ),
  () => [],
  () => ({}),
  () => '\u0000\uD800\u202E',
  () => 'x'.repeat(100_000),
  () => JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}'),
  () => JSON.parse('['.repeat(2_000) + ']'.repeat(2_000)),
  () => `=${'ABS('.repeat(3_000)}`,
];

interface Spot {
  readonly holder: Record<string, Json>;
  readonly key: string;
}

/** As deep as files of ours go; what was put in before goes deeper. */
const deepest = 30;

function spotsOf(json: Json, depth = 0): Spot[] {
  if (typeof json !== 'object' || json === null || depth > deepest) return [];
  const holder = json as Record<string, Json>;
  return Object.keys(holder).flatMap((key) => [
    { holder, key },
    ...spotsOf(holder[key], depth + 1),
  ]);
}

const changes: readonly ((spot: Spot, spots: readonly Spot[], next: Chance) => void)[] = [
  ({ holder, key }, _, next) => {
    holder[key] = pick(odd, next)();
  },
  ({ holder, key }) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  },
  ({ holder, key }, spots, next) => {
    const { holder: from, key: other } = pick(spots, next);
    holder[key] = structuredClone(from[other]);
  },
  ({ holder, key }) => {
    if (Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]));
    else holder[`${key} `] = holder[key];
  },
  ({ holder, key }, _, next) => {
    const value = holder[key];
    if (typeof value === 'number') holder[key] = value * (next() - 0.5) * 10;
    if (typeof value === 'string') holder[key] = value.slice(Math.floor(next() * value.length));
  },
];

/** JSON with one to three values changed, left out, doubled or taken from elsewhere in it. */
export function spoiledJson(text: string, next: Chance): string {
  const whole = { json: JSON.parse(text) as Json };
  for (let times = Math.ceil(next() * 3); times > 0; times -= 1) {
    const spots = spotsOf(whole);
    if (spots.length === 0) break;
    pick(changes, next)(pick(spots, next), spots, next);
  }
  return JSON.stringify(whole.json) ?? '';
}

/** Bytes cut short, changed, dropped or put twice, up to six times. */
export function spoiledBytes(file: Uint8Array, next: Chance): Uint8Array {
  let bytes = [...file];
  for (let times = Math.ceil(next() * 6); times > 0 && bytes.length > 0; times -= 1) {
    const at = Math.floor(next() * bytes.length);
    const length = Math.ceil(next() * 200);
    const how = Math.floor(next() * 4);
    if (how === 0) bytes = bytes.slice(0, at);
    else if (how === 1) bytes[at] = Math.floor(next() * 256);
    else if (how === 2) bytes.splice(at, length);
    else bytes.splice(at, 0, ...bytes.slice(at, at + length));
  }
  return Uint8Array.from(bytes);
}
