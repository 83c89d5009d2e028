import { strToU8, zipSync } from 'fflate';

/** Texts as one zip file, by their paths. */
export function zipOf(
  files: readonly { readonly path: string; readonly text: string }[],
  made: Date,
): Uint8Array {
  const parts = files.map(({ path, text }) => [path, strToU8(text)] as const);
  return zipSync(Object.fromEntries(parts), { mtime: made });
}
