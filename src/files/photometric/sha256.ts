/** The first bits of the fractions of the roots of the first primes (FIPS 180-4). */
function fractions(count: number, root: number): Int32Array {
  const primes: number[] = [];
  for (let number = 2; primes.length < count; number += 1)
    if (primes.every((prime) => number % prime !== 0)) primes.push(number);
  return Int32Array.from(primes, (prime) => (prime ** (1 / root) % 1) * 2 ** 32);
}

const start = fractions(8, 2);
const rounds = fractions(64, 3);
const turned = (word: number, by: number) => (word >>> by) | (word << (32 - by));

/** SHA-256 of a text in UTF-8, in hexadecimal digits. The browser’s own wants a secure page and a wait. */
export function sha256(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const padded = new Uint8Array(((bytes.length + 8) >> 6) * 64 + 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, bytes.length << 3);
  const hash = start.slice();
  const words = new Int32Array(64);
  for (let from = 0; from < padded.length; from += 64) {
    for (let index = 0; index < 16; index += 1) words[index] = view.getInt32(from + 4 * index);
    for (let index = 16; index < 64; index += 1) {
      const [near, far] = [words[index - 2]!, words[index - 15]!];
      const one = turned(near, 17) ^ turned(near, 19) ^ (near >>> 10);
      const other = turned(far, 7) ^ turned(far, 18) ^ (far >>> 3);
      words[index] = one + words[index - 7]! + other + words[index - 16]!;
    }
    mix(hash, words);
  }
  return Array.from(hash, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

function mix(hash: Int32Array, words: Int32Array): void {
  let [a, b, c, d, e, f, g, h] = hash as unknown as Eight;
  for (let index = 0; index < 64; index += 1) {
    const big = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const one = h + big + ((e & f) ^ (~e & g)) + rounds[index]! + words[index]!;
    const small = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const other = small + ((a & b) ^ (a & c) ^ (b & c));
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + other) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, index) => (hash[index]! += word));
}

type Eight = [number, number, number, number, number, number, number, number];
