/** What a verdict says, apart from how much: each has a shape of its own beside the words. */
export type VerdictShape = 'over' | 'under' | 'agrees' | 'clips' | 'lost' | 'in range';

/** A difference this small is none: what rounding leaves. */
export const grace = 1e-9;

const fractions: readonly (readonly [number, string])[] = [
  [0, ''],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [2 / 3, '2/3'],
  [3 / 4, '3/4'],
  [1, ''],
];

/** An amount in stops as people say it: "1/3 stop", "1 2/3 stops", "0.4 stop". */
export function stopsInWords(stops: number): string {
  const amount = Math.abs(stops);
  const number = asFraction(amount) ?? asDecimal(amount);
  return `${number} ${Number.parseFloat(asDecimal(amount)) > 1 ? 'stops' : 'stop'}`;
}

function asFraction(amount: number): string | undefined {
  const whole = Math.floor(amount);
  const found = fractions.find(([value]) => Math.abs(amount - whole - value) < 0.005);
  if (!found) return undefined;
  const [value, name] = found;
  const full = whole + Math.floor(value);
  if (full === 0 && name === '') return undefined;
  return [full > 0 ? String(full) : '', name].filter(Boolean).join(' ');
}

function asDecimal(amount: number): string {
  return amount >= 0.095 ? String(Math.round(amount * 10) / 10) : amount.toPrecision(1);
}

/** Words for a difference in stops: "1/3 stop over", "0.7 stop under", "agrees". */
export function verdictWords(off: number, tolerance: number): string {
  if (Math.abs(off) <= tolerance + grace) return 'agrees';
  return `${stopsInWords(off)} ${off > 0 ? 'over' : 'under'}`;
}

/** Words for a tone against what the camera holds, in stops from its middle grey. */
export function placementWords(fromGrey: number, above: number, below: number): string {
  if (fromGrey > above + grace) return `clips by ${stopsInWords(fromGrey - above)}`;
  if (fromGrey < -below - grace) return `lost by ${stopsInWords(-below - fromGrey)}`;
  return 'in range';
}

const shapes: readonly (readonly [RegExp, VerdictShape])[] = [
  [/^(agrees|cannot be told apart)$/, 'agrees'],
  [/^in range$/, 'in range'],
  [/^clips by /, 'clips'],
  [/^lost by /, 'lost'],
  [/ over$/, 'over'],
  [/ under$/, 'under'],
  [/^[\d.,]+\smired too warm|^green by /, 'over'],
  [/^[\d.,]+\smired too blue|^magenta by /, 'under'],
];

/** Which shape belongs to words made here; undefined for any other text. */
export function verdictShape(words: string): VerdictShape | undefined {
  return shapes.find(([pattern]) => pattern.test(words))?.[1];
}
