import sax from 'sax';
import { utf8 } from './bytes.ts';
import { most, Refused } from './refused.ts';
import { words } from '../../words/words.ts';

export type Attributes = Readonly<Record<string, string>>;

/** What is done at each element. Names are as `named` gives them. */
export interface Handlers {
  open?(name: string, attributes: Attributes): void;
  text?(text: string): void;
  close?(name: string): void;
  /** Told before each of these, and before what is wrong: the line, counted from 1. */
  line?(line: number): void;
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
  const parser = sax.parser(true, { position: handlers.line !== undefined });
  let depth = 0;
  const at = () => handlers.line?.(parser.line + 1);
  parser.onerror = () => {
    at();
    throw new Refused(words.files.partDamaged(part));
  };
  parser.ondoctype = () => {
    throw new Refused(words.files.partDeclares(part));
  };
  parser.onopentag = ({ name, attributes }) => {
    at();
    depth += 1;
    if (depth > most.depth) throw new Refused(words.files.partTooDeep(part));
    // Namespaces are not looked up, so every attribute is a text.
    handlers.open?.(named(name), attributes as Attributes);
  };
  parser.ontext = (text) => handlers.text?.(text);
  parser.oncdata = (text) => handlers.text?.(text);
  parser.onclosetag = (name) => {
    at();
    depth -= 1;
    handlers.close?.(named(name));
  };
  parser.write(utf8(bytes, part)).close();
}
