/** How a number without a unit is to be understood where comma and point clash. */
export interface NumberRule {
  readonly decimal: '.' | ',';
  /** Thousands make no sense here: a single comma or point is the decimal sign. */
  readonly small?: boolean;
}

const exponent = /e([+-]?\d{1,4})$/i;
const groups = /^\d{1,3}(?:([ '.,])\d{3})(?:\1\d{3})*$/;

/**
 * Reads an unsigned number, point or comma, with or without thousands. `1,250.00`, `1.250,00`,
 * `1 250` and `41,5` mean the same everywhere; in `1,250` and `1.250` the setting decides.
 * Undefined when it is not a number.
 */
export function readNumber(text: string, rule: NumberRule): number | undefined {
  const power = exponent.exec(text);
  const body = power === null ? text : text.slice(0, power.index);
  const plain = withPoint(body, rule);
  if (plain === undefined || !/^(?:\d+\.?\d*|\.\d+)$/.test(plain)) return undefined;
  const value = Number(power === null ? plain : `${plain}e${power[1]}`);
  return Number.isFinite(value) ? value : undefined;
}

/** The same number with a point and no thousands, or undefined when the signs contradict. */
function withPoint(body: string, rule: NumberRule): string | undefined {
  // The sign that comes last is the decimal sign, unless it is there more often: then it parts thousands.
  const sign = Math.max(body.lastIndexOf('.'), body.lastIndexOf(','));
  const single = body.indexOf(body.charAt(sign)) === sign;
  if (!single) return ungrouped(body);
  const clash = groups.test(body) && !body.startsWith('0') && !/[ ']/.test(body);
  if (clash && body.charAt(sign) !== rule.decimal && !rule.small) return ungrouped(body);
  return join(body, sign);
}

function join(body: string, sign: number): string | undefined {
  const whole = body.slice(0, sign);
  const fraction = body.slice(sign + 1);
  const digits = whole === '' ? '' : ungrouped(whole);
  return digits === undefined ? undefined : `${digits}.${fraction}`;
}

function ungrouped(digits: string): string | undefined {
  if (/^\d+$/.test(digits)) return digits;
  return groups.test(digits) ? digits.replace(/\D/g, '') : undefined;
}
