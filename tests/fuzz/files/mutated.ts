import fc from 'fast-check';

/** Files of other programs with something wrong: cut short, bytes changed, a piece put twice. */
export const mutated = (file: Uint8Array): fc.Arbitrary<Uint8Array> =>
  fc
    .array(
      fc.record({
        how: fc.constantFrom('cut', 'set', 'double', 'drop'),
        at: fc.nat(file.length - 1),
        length: fc.integer({ min: 1, max: 200 }),
        byte: fc.nat(255),
      }),
      { minLength: 1, maxLength: 6 },
    )
    .map((changes) => changes.reduce(change, file));

interface Change {
  readonly how: string;
  readonly at: number;
  readonly length: number;
  readonly byte: number;
}

function change(file: Uint8Array, { how, at, length, byte }: Change): Uint8Array {
  const bytes = [...file];
  if (how === 'cut') return file.slice(0, at);
  if (how === 'set') bytes[at] = byte;
  else if (how === 'drop') bytes.splice(at, length);
  else bytes.splice(at, 0, ...bytes.slice(at, at + length));
  return Uint8Array.from(bytes);
}
