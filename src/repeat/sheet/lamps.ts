import type { Record, RecordedLight, RecordedPoint } from '../../book/records.ts';

/** The lamp that lights a point, as far as the record tells. Metres; share of full output. */
export interface Lamp {
  readonly name: string;
  readonly distance?: number;
  readonly nearest?: number;
  readonly output?: number;
  readonly pieces: readonly string[];
}

const none = /^(none|no|0|–|-)?$/i;
const modifiers = ['scrim', 'net', 'diffusion', 'modifier'];

/** By its job: the lamp of the job “key” lights the “Key side of face”. */
export function lampOf({ rig }: Pick<Record, 'rig'>, point: RecordedPoint): Lamp {
  const said = (light: RecordedLight, caption: string) =>
    light.says.find((one) => one.caption === caption);
  const job = (light: RecordedLight) =>
    (said(light, 'job')?.text ?? said(light, 'light')?.text ?? '').trim().toLowerCase();
  const light = rig.find((one) => job(one) !== '' && point.name.toLowerCase().startsWith(job(one)));
  const distance = point.distance ?? (light && said(light, 'distance')?.value);
  const output = point.output ?? (light && said(light, 'output')?.value);
  const pieces = light
    ? modifiers.flatMap((caption) => said(light, caption)?.text ?? []).map(bare)
    : [];
  return {
    name: light ? job(light) : '',
    ...(distance !== undefined && distance > 0 && { distance }),
    ...(point.nearest !== undefined && { nearest: point.nearest }),
    ...(output !== undefined && output > 0 && { output }),
    pieces: pieces.filter((piece) => !none.test(piece)),
  };
}

/** “double (1 stop)” is a double. */
const bare = (text: string) => text.replace(/\s*\(.*\)\s*$/, '').trim();
