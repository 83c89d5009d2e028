import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { Notice } from '../panels/shown.ts';
import { words } from '../words/words.ts';

/** One sentence at a time, gone again after it could be read. */
export interface Notices {
  readonly now: ReadonlySignal<Notice | null>;
  say(sentence: string, tone?: Notice['tone'], undo?: boolean): void;
  /** Of something that nobody caught. */
  broke(cause: unknown): void;
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
  const show = (notice: Omit<Notice, 'id'>) => {
    clearTimeout(timer);
    now.value = { id: (id += 1), ...notice };
    const { length } = notice.sentence;
    timer = setTimeout(clear, reading.shortest + length * reading.forEachCharacter);
  };
  return {
    now,
    clear,
    say: (sentence, tone = 'done', undo = false) => show({ sentence, tone, undo }),
    broke: (cause) =>
      show({ sentence: words.broken.unexpected, tone: 'refused', undo: false, cause }),
  };
}
