import { readAmount } from './amount.ts';
import type { Parsed, Reader } from './parsed.ts';

const signs: Readonly<Record<string, string>> = { '€': 'EUR', $: 'USD', '£': 'GBP', '¥': 'JPY' };
const pattern = /^([+-]?) ?([a-z]{3}|[€$£¥])? ?([+-]?[\d.,][\d.,' ]*?) ?([a-z]{3}|[€$£¥])?$/iu;

/** `1,250.00`, `1.250,00 €`, `EUR 18`. Another currency than the workbook's is refused. */
export const readMoney: Reader = (text, settings) => {
  const found = pattern.exec(text);
  if (found === null) return undefined;
  const [, sign = '', before, digits = '', after] = found;
  const amount = readAmount(`${sign}${digits}`, settings);
  if (amount?.rest !== '') return undefined;
  const written = before ?? after;
  if (written === undefined) return { value: amount.value, unitWritten: false };
  if (before !== undefined && after !== undefined) return undefined;
  const currency = signs[written] ?? written.toUpperCase();
  if (currency === settings.currency) return { value: amount.value, unitWritten: true };
  const isCurrency = written in signs || /^[A-Z]{3}$/u.test(written);
  return isCurrency
    ? { reason: `The workbook counts in ${settings.currency}; ${text} is another currency.` }
    : undefined;
};

/** Money wherever it stands: with the sign or code of the workbook's currency. */
export const readWrittenMoney: Reader = (text, settings, context): Parsed => {
  const money = readMoney(text, settings, context);
  return money !== undefined && 'value' in money && money.unitWritten ? money : undefined;
};
