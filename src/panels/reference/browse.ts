import type { AnyDefinition } from '../../../functions/define.ts';
import { families } from '../../../functions/define.ts';
import { pageOf, titleOf, type FunctionPage } from '../../reference/page.ts';
import { functionsFor } from '../entry/suggest.ts';
import { computed, signal, type ReadonlySignal, type Signal } from '../kit/signals.ts';
import { words } from '../../words/words.ts';

/** Functions under one heading. */
export interface Group {
  readonly title: string;
  readonly functions: readonly AnyDefinition[];
}

/** Where one is in the reference: what was asked for, what that finds, and which function is open. */
export interface Browse {
  readonly words: Signal<string>;
  readonly groups: ReadonlySignal<readonly Group[]>;
  readonly page: ReadonlySignal<FunctionPage | undefined>;
  /** The function to go back to, after a link was followed. */
  readonly before: ReadonlySignal<string | undefined>;
  /** On a narrow screen either the list is shown or the open function. */
  readonly reading: Signal<boolean>;
  /** Opens the next function of the list, or the one before. */
  step(way: 1 | -1): void;
  open(name: string): void;
  /** As `open`, with a way back. */
  follow(name: string): void;
  goBack(): void;
}

export function browse(functions: ReadonlySignal<readonly AnyDefinition[]>, at?: string): Browse {
  const words = signal('');
  const name = signal(at);
  const trail = signal<readonly string[]>([]);
  const page = computed(() => {
    const found = functions.value.find((one) => one.name === name.value);
    return found && pageOf(found);
  });
  const reading = signal(page.value !== undefined);
  const groups = computed(() => groupsOf(words.value.trim(), functions.value));
  const open = (next: string | undefined) => {
    trail.value = [];
    name.value = next;
  };
  return {
    ...{ words, groups, page, reading, open },
    before: computed(() => trail.value.at(-1)),
    step(way) {
      const listed = groups.value.flatMap((group) => group.functions);
      const now = listed.findIndex((one) => one.name === name.value);
      const next = now < 0 ? (way > 0 ? 0 : listed.length - 1) : now + way;
      open(listed[(next + listed.length) % listed.length]?.name ?? name.value);
    },
    follow(next) {
      if (name.value !== undefined) trail.value = [...trail.value, name.value];
      name.value = next;
    },
    goBack() {
      const last = trail.value.at(-1);
      if (last === undefined) return;
      trail.value = trail.value.slice(0, -1);
      name.value = last;
    },
  };
}

/** By family; with words, the best answer first. */
function groupsOf(asked: string, functions: readonly AnyDefinition[]): readonly Group[] {
  if (asked !== '') {
    const found = functionsFor(asked.toLowerCase(), functions);
    return found.length > 0 ? [{ title: words.reference.foundBy(asked), functions: found }] : [];
  }
  return families
    .map((family) => ({
      title: titleOf(family),
      functions: functions.filter((one) => one.family === family),
    }))
    .filter((group) => group.functions.length > 0);
}
