const plain = /^([+-]?)(\d{1,12})(?:([.,])(\d{1,6}))?(\s*[^\d.,+\-\s][^\d]*)?$/;

interface Written {
  /** The number times ten to the power of its decimals, so that steps are exact. */
  readonly scaled: bigint;
  readonly decimals: number;
  readonly sign: string;
  readonly mark: string;
  readonly unit: string;
}

/**
 * Continues typed numbers in equal steps, with their unit, sign and decimals: `0`-based steps from
 * the first, negative ones before it. `undefined` for fewer than two or anything but such a series.
 */
export function continued(
  texts: readonly (string | undefined)[],
): ((step: number) => string) | undefined {
  const written = texts.map((text) => (text === undefined ? undefined : readWritten(text)));
  const known = written.filter((each) => each !== undefined);
  const [first] = known;
  if (!first || known.length < 2 || known.length < texts.length) return undefined;
  const decimals = Math.max(...known.map((each) => each.decimals));
  const mark = known.find((each) => each.mark !== '')?.mark ?? '';
  if (known.some((each) => each.unit !== first.unit || (each.mark !== '' && each.mark !== mark)))
    return undefined;
  const values = known.map((each) => each.scaled * 10n ** BigInt(decimals - each.decimals));
  const start = values[0] ?? 0n;
  const step = (values[1] ?? 0n) - start;
  if (values.some((value, i) => value !== start + step * BigInt(i))) return undefined;
  const signed = known.some((each) => each.sign === '+');
  return (index) => write(start + step * BigInt(index), decimals, mark, signed) + first.unit;
}

function readWritten(text: string): Written | undefined {
  const match = plain.exec(text.trim());
  if (!match) return undefined;
  const [, sign = '', whole = '', mark = '', fraction = '', unit = ''] = match;
  const size = BigInt(whole + fraction);
  return {
    scaled: sign === '-' ? -size : size,
    decimals: fraction.length,
    sign,
    mark,
    unit,
  };
}

function write(value: bigint, decimals: number, mark: string, signed: boolean): string {
  const digits = String(value < 0n ? -value : value).padStart(decimals + 1, '0');
  const sign = value < 0n ? '-' : signed && value > 0n ? '+' : '';
  const whole = digits.slice(0, digits.length - decimals);
  return sign + whole + (decimals > 0 ? mark + digits.slice(-decimals) : '');
}
