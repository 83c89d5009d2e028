import type { WritingSettings } from '../../../../functions/quantities/settings.ts';
import { said } from '../../kit/words.ts';
import type { Ladder } from './read.ts';

/** A level between two rows of the table, to whole steps where the scale has many: no waveform says more. */
export function saidSignal(
  { quantity, rows }: NonNullable<Ladder['signal']>,
  level: number,
  writing: WritingSettings,
): string {
  const most = Math.max(...rows.map(([, each]) => each));
  return said(quantity, level, writing, quantity === 'share' || most >= 10 ? { decimals: 0 } : {});
}
