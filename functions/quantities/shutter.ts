import { readAmount } from './amount.ts';
import { readWithUnits } from './withUnits.ts';
import type { Reader } from './parsed.ts';

const noFrameRate =
  'is a shutter angle, and without a frame rate it gives no time. Write a time such as 1/50 s, or give the frame rate first.';
const noFrameRateForTime =
  'is a time, and without a frame rate it gives no shutter angle. Write an angle such as 180°, or give the frame rate first.';

/** Exposure times; a shutter angle becomes a time where the frame rate is known. */
export const readTime: Reader = (text, settings, context) => {
  const amount = readAmount(text, { decimal: settings.decimal });
  const bareAngle = settings.shutter === 'angle' && amount?.rest === '' && !amount.fraction;
  const angle = readWithUnits('angle', text, settings);
  if (angle !== undefined && 'value' in angle && (angle.unitWritten || bareAngle)) {
    if (context.fps === undefined || !(context.fps > 0)) {
      return { reason: `${text} ${noFrameRate}`, wrongKind: 'angle' };
    }
    if (angle.value <= 0 || angle.value > 360) {
      return { reason: `A shutter angle is more than 0° and at most 360°; ${text} is not.` };
    }
    return { value: angle.value / 360 / context.fps, unitWritten: angle.unitWritten };
  }
  return readWithUnits('time', text, settings);
};

/** Angles; an exposure time becomes a shutter angle where the frame rate is known. */
export const readAngle: Reader = (text, settings, context) => {
  const angle = readWithUnits('angle', text, settings);
  if (angle !== undefined) return angle;
  const time = readWithUnits('time', text, settings);
  if (time === undefined || !('value' in time) || !time.unitWritten) return undefined;
  if (context.fps === undefined || !(context.fps > 0)) {
    return { reason: `${text} ${noFrameRateForTime}`, wrongKind: 'time' };
  }
  return { value: time.value * context.fps * 360, unitWritten: true };
};
