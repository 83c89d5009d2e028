import { readAny, type QuantityName } from '../../functions/quantities/index.ts';
import { writingSettings, type WalkDecimal } from './writing.ts';

/** What a walk says of the camera: which caption of the sheet it belongs to, and what to type there. */
export interface CameraSetting {
  readonly label: string;
  readonly typed: string;
}

const captions: Partial<Readonly<Record<QuantityName, string>>> = {
  iso: 'Speed',
  frameRate: 'Frame rate',
  angle: 'Shutter',
  time: 'Shutter',
  colourTemperature: 'White',
  frequency: 'Mains',
  fNumber: 'Taking stop',
};

/**
 * Reads "ISO 800, 25 fps, 180°, ND none, white balance 3200 K" into what to type beside each caption.
 * Parts that mean nothing here are returned as they were.
 */
export function readCameraSettings(
  text: string,
  decimal: WalkDecimal,
): { readonly settings: readonly CameraSetting[]; readonly leftOut: readonly string[] } {
  const settings: CameraSetting[] = [];
  const leftOut: string[] = [];
  for (const part of text.split(/[,;]\s+/).map((piece) => piece.trim())) {
    if (part === '') continue;
    const setting = readOne(part, decimal);
    if (setting) settings.push(setting);
    else leftOut.push(part);
  }
  return { settings, leftOut };
}

function readOne(part: string, decimal: WalkDecimal): CameraSetting | undefined {
  if (/^(nd|filters?) *(none|0|no)$/i.test(part)) return { label: 'Filters lose', typed: '0' };
  const bare = part.replace(/^(white balance|white|wb|balance) +/i, '').replace(/ +mains$/i, '');
  const reading = readAny(bare, writingSettings(decimal));
  if (!reading.ok) return undefined;
  if (reading.quantity === 'density') {
    // A label counts as its nominal stops: 0.3 is one.
    const stops = reading.value / Math.log10(2);
    return { label: 'Filters lose', typed: String(Math.round(stops * 1e6) / 1e6) };
  }
  const label = captions[reading.quantity];
  return label === undefined ? undefined : { label, typed: bare };
}
