import type { NumberLook } from '../plain/types.ts';
import { element, escaped } from './xml.ts';

const two = { 'number:style': 'long' };
const dash = element('number:text', {}, '-');
const date =
  element('number:year', two) +
  dash +
  element('number:month', two) +
  dash +
  element('number:day', two);
const clock =
  element('number:hours', two) + element('number:text', {}, ':') + element('number:minutes', two);

/** A data style of ISO/IEC 26300, part 3, 16.29, with those that it changes to. */
export function numberStyle(name: string, look: NumberLook): string {
  const named = { 'style:name': name };
  if (look.moment === 'time') return element('number:time-style', named, clock);
  if (look.moment === 'date') return element('number:date-style', named, date);
  if (look.moment)
    return element('number:date-style', named, date + element('number:text', {}, ' ') + clock);
  if (look.mark) return marked(name, look, look.mark);
  if (look.signed) return signed(name, look);
  const kind = look.percent ? 'number:percentage-style' : 'number:number-style';
  return element(kind, named, content(look));
}

function content(look: NumberLook, sign = ''): string {
  const { decimals, thousands, percent } = look;
  const digits = element('number:number', {
    'number:min-integer-digits': 1,
    'number:decimal-places': decimals,
    'number:min-decimal-places': decimals,
    'number:grouping': thousands ? 'true' : undefined,
  });
  return (
    words(sign + (look.before ?? '')) + digits + words((percent ? '%' : '') + (look.after ?? ''))
  );
}

const words = (text: string) => (text === '' ? '' : `<number:text>${escaped(text)}</number:text>`);

/** A plus or a minus stands before the words that stand before the number. */
function signed(name: string, look: NumberLook): string {
  const part = (suffix: string, sign: string) =>
    element(
      'number:number-style',
      { 'style:name': name + suffix, 'style:volatile': 'true' },
      content(look, sign),
    );
  const change = (condition: string, suffix: string) =>
    element('style:map', { 'style:condition': condition, 'style:apply-style-name': name + suffix });
  return (
    part('P0', '+') +
    part('P1', '-') +
    element(
      'number:number-style',
      { 'style:name': name },
      content(look) + change('value()>0', 'P0') + change('value()<0', 'P1'),
    )
  );
}

/** Only the number that was typed reads as its mark; another typed over it reads as a number. */
function marked(name: string, look: NumberLook, mark: NonNullable<NumberLook['mark']>): string {
  const volatile = { 'style:volatile': 'true' };
  const number = content(look);
  const below = (mark.value * (1 - 1e-6)).toPrecision(12);
  const above = (mark.value * (1 + 1e-6)).toPrecision(12);
  const change = (condition: string, suffix: string) =>
    element('style:map', { 'style:condition': condition, 'style:apply-style-name': name + suffix });
  return (
    element('number:number-style', { 'style:name': `${name}P0`, ...volatile }, number) +
    element('number:number-style', { 'style:name': `${name}P1`, ...volatile }, words(mark.text)) +
    element(
      'number:number-style',
      { 'style:name': name },
      number + change(`value()<${below}`, 'P0') + change(`value()<=${above}`, 'P1'),
    )
  );
}
