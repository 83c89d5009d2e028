import { local, walk } from '../in/xml.ts';

/** Escapes such as `_x000D_` for characters that XML does not hold. */
export const unescaped = (text: string): string =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
    String.fromCharCode(parseInt(code, 16)),
  );

/** The texts that cells of all sheets share; how they are pronounced is left out. */
export function readStrings(bytes: Uint8Array): readonly string[] {
  const strings: string[] = [];
  const within: string[] = [];
  let text = '';
  walk(bytes, 'sharedStrings.xml', local, {
    open(name) {
      within.push(name);
      if (name === 'si') text = '';
    },
    text(more) {
      if (within.at(-1) === 't' && !within.includes('rPh')) text += more;
    },
    close(name) {
      within.pop();
      if (name === 'si') strings.push(unescaped(text));
    },
  });
  return strings;
}
