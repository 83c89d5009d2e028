import { defaultWriting, type WritingSettings } from '../../functions/quantities/index.ts';

export type WalkDecimal = WritingSettings['decimal'];

/** How numbers of a walk are read: its own decimal sign, and lux and metres where no unit is written. */
export function writingSettings(decimal: WalkDecimal): WritingSettings {
  return { ...defaultWriting, decimal };
}
