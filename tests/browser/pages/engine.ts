import { createMeans } from '../../../src/app/means.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { connectEngine, isFunction } from '../../../src/engine/index.ts';

/** A book and its engine in the browser, with no screen: what the app is measured against. */
export interface EngineBench {
  open(text: string): void;
  /** Milliseconds until everything that looks at A1 is calculated anew. */
  type(text: string): number;
}

declare global {
  interface Window {
    engineBench: EngineBench;
  }
}

const means = createMeans(isFunction);
let type: EngineBench['type'] = () => Number.NaN;

window.engineBench = {
  open(text) {
    const read = readBook(text);
    if (!read.ok) throw new Error(read.reason);
    const book = createBook(read.document);
    connectEngine(book);
    const spot = { sheet: book.document.sheets[0]?.id ?? '', row: 0, column: 0 };
    type = (text) => {
      const made = enter(book.document, means, [{ ...spot, text }]);
      if (!made.ok) throw new Error(made.reason);
      const begun = performance.now();
      const ran = book.run(made.transaction);
      if (!ran.ok) throw new Error(ran.reason);
      return performance.now() - begun;
    };
  },
  type: (text) => type(text),
};
document.body.dataset['ready'] = 'true';
