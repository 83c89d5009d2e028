import type { Reader } from './parsed.ts';
import { readWithUnits } from './withUnits.ts';

/** `50 %`, `0.5`. Over 1 the per cent sign must be written: 65 would be 6500 %. */
export const readShare: Reader = (text, settings) => {
  const share = readWithUnits('share', text, settings);
  if (share === undefined || !('value' in share) || share.unitWritten) return share;
  if (share.value > 1) {
    return { reason: `A share without % goes from 0 to 1. Write ${text} % if that is meant.` };
  }
  return share;
};
