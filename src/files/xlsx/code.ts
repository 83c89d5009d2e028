import type { NumberLook } from '../plain/types.ts';

const moments = {
  date: 'yyyy\\-mm\\-dd',
  time: 'hh:mm',
  dateTime: 'yyyy\\-mm\\-dd hh:mm',
} as const;

/** A number format code of ISO/IEC 29500-1, 18.8.31. */
export function codeOf(look: NumberLook): string {
  if (look.moment) return moments[look.moment];
  const number = literal(look.before) + digits(look) + literal(look.after);
  if (look.mark) {
    const { value, text } = look.mark;
    return `[<${around(value, -1)}]${number};[<=${around(value, 1)}]${literal(text)};${number}`;
  }
  return look.signed ? `+${number};\\-${number};${number}` : number;
}

/** Between these two nothing else that people write can lie. */
export const around = (value: number, side: 1 | -1): string =>
  (value * (1 + side * 1e-6)).toPrecision(12).replace(/\.?0+$/, '');

function digits({ decimals, percent, thousands }: NumberLook): string {
  const whole = thousands ? '#,##0' : '0';
  const percentSign = percent ? '%' : '';
  if (decimals === undefined) return percent ? '0.##%' : 'General';
  return whole + (decimals > 0 ? `.${'0'.repeat(decimals)}` : '') + percentSign;
}

function literal(text: string | undefined): string {
  if (text === undefined || text === '') return '';
  return text
    .split('"')
    .map((part) => (part === '' ? '' : `"${part}"`))
    .join('\\"');
}
