import { SaxesParser } from 'saxes';
import { utf8 } from './bytes.ts';
import { most, Refused } from './refused.ts';

export type Attributes = Readonly<Record<string, string>>;

/** What is done at each element. Names are as `named` gives them. */
export interface Handlers {
  open?(name: string, attributes: Attributes): void;
  text?(text: string): void;
  close?(name: string): void;
}

/** `x:row` is `row`, whatever short name a program gave the namespace. */
export const local = (name: string): string => name.slice(name.indexOf(':') + 1);
export const qualified = (name: string): string => name;

/** Walks through a part. Declarations of entities are refused: no book of sheets has any. */
export function walk(
  bytes: Uint8Array,
  part: string,
  named: (name: string) => string,
  handlers: Handlers,
): void {
  const parser = new SaxesParser({ xmlns: false, position: false });
  let depth = 0;
  parser.on('error', () => {
    throw new Refused(`The part ${part} is damaged.`);
  });
  parser.on('doctype', () => {
    throw new Refused(`The part ${part} declares a document type, which no book of sheets needs.`);
  });
  parser.on('opentag', ({ name, attributes }) => {
    depth += 1;
    if (depth > most.depth) throw new Refused(`The part ${part} nests too deep.`);
    handlers.open?.(named(name), attributes);
  });
  parser.on('text', (text) => handlers.text?.(text));
  parser.on('cdata', (text) => handlers.text?.(text));
  parser.on('closetag', ({ name }) => {
    depth -= 1;
    handlers.close?.(named(name));
  });
  parser.write(utf8(bytes, part)).close();
}
