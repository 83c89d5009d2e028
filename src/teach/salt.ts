/** Sixteen bytes that nobody can guess, in hexadecimal. */
export const newSalt = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
