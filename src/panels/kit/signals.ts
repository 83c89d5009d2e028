/** The signals that panels are drawn from; app takes them from here. */
export { batch, computed, effect, signal, untracked } from '@preact/signals-core';
export type { ReadonlySignal, Signal } from '@preact/signals-core';
