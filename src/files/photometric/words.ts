import { Fault, numberFrom, type Stated } from './fault.ts';
import { words } from '../../words/words.ts';

/** Both file forms end lines in any of the three ways; an old editor may leave its end mark. */
export function linesOf(text: string): readonly string[] {
  return text
    .replace(/^\uFEFF/, '')
    .replace(/\u001A\s*$/, '')
    .split(/\r\n|\n|\r/);
}

/** Numbers one after the other, wherever lines break between them. */
export class Words {
  readonly #lines: readonly string[];
  #line: number;
  #words: readonly string[] = [];
  #next = 0;

  /** Begins on the line with this index. */
  constructor(lines: readonly string[], line: number) {
    this.#lines = lines;
    this.#line = line - 1;
  }

  number(what: string): Stated {
    const word = this.#word();
    const line = this.#line + 1;
    if (word === undefined) throw new Fault(this.#lines.length, words.photometric.endsBefore(what));
    const value = numberFrom(word);
    if (!Number.isFinite(value))
      throw new Fault(line, words.photometric.noNumber(shortened(word), what));
    return { value, line };
  }

  numbers(count: number, what: (index: number) => string): readonly Stated[] {
    const found: Stated[] = [];
    for (let index = 0; index < count; index += 1) found.push(this.number(what(index)));
    return found;
  }

  /** Nothing may follow. */
  end(): void {
    const word = this.#word();
    if (word !== undefined)
      throw new Fault(this.#line + 1, words.photometric.holdsMore(shortened(word)));
  }

  #word(): string | undefined {
    while (this.#next >= this.#words.length) {
      this.#line += 1;
      const line = this.#lines[this.#line];
      if (line === undefined) return undefined;
      this.#words = line.split(/[\s,]+/).filter((word) => word !== '');
      this.#next = 0;
    }
    return this.#words[this.#next++];
  }
}

export function shortened(word: string): string {
  return word.length > 24 ? `${word.slice(0, 24)}…` : word;
}
