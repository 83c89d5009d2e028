import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { Notice } from '../panels/workbook.ts';

/** One sentence at a time, gone again after it could be read. */
export interface Notices {
  readonly now: ReadonlySignal<Notice | null>;
  say(sentence: string, tone?: Notice['tone'], undo?: boolean): void;
  clear(): void;
}

const reading = { shortest: 4_000, forEachCharacter: 60 };

export function createNotices(): Notices {
  const now = signal<Notice | null>(null);
  let id = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const clear = () => {
    clearTimeout(timer);
    now.value = null;
  };
  return {
    now,
    clear,
    say(sentence, tone = 'done', undo = false) {
      clearTimeout(timer);
      now.value = { id: (id += 1), sentence, tone, undo };
      timer = setTimeout(clear, reading.shortest + sentence.length * reading.forEachCharacter);
    },
  };
}
