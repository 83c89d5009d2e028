import type { CallSettings } from './arguments/slot.ts';
import { defaultWriting } from './quantities/settings.ts';

/** What a call falls back on where nobody set anything else: dome readings, lux and metres. */
export const usual: CallSettings = {
  writing: defaultWriting,
  book: { receptor: 340, continuousShare: 0.8, tolerance: 1 / 3 },
};
