import { local, walk } from '../in/xml.ts';
import { unescaped } from './strings.ts';

/** Notes by the address of their cell. */
export function readNotes(bytes: Uint8Array): ReadonlyMap<string, string> {
  const notes = new Map<string, string>();
  let at = '';
  let text = '';
  let within = '';
  walk(bytes, 'comments', local, {
    open(name, attributes) {
      within = name;
      if (name === 'comment') {
        at = attributes['ref'] ?? '';
        text = '';
      }
    },
    text(more) {
      if (within === 't') text += more;
    },
    close(name) {
      within = '';
      if (name === 'comment') notes.set(at, unescaped(text).replace(/\r\n?/g, '\n'));
    },
  });
  return notes;
}
