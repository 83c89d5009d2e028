import type { Attributes } from '../in/xml.ts';
import type { PlainValue } from '../plain/types.ts';

const day = 86_400_000;
const dayZero = Date.UTC(1899, 11, 30);

/** What a cell holds, by its attributes, else its text. */
export function valueIn(attributes: Attributes, text: string): PlainValue {
  if (attributes['calcext:value-type'] === 'error') return { error: text };
  switch (attributes['office:value-type']) {
    case 'float':
    case 'percentage':
    case 'currency':
      return numeric(attributes['office:value']);
    case 'date':
      return dateIn(attributes['office:date-value'] ?? '') ?? text;
    case 'time':
      return durationIn(attributes['office:time-value'] ?? '') ?? text;
    case 'boolean':
      return attributes['office:boolean-value'] === 'true';
    case 'string':
      return attributes['office:string-value'] ?? text;
    default:
      return text === '' ? null : text;
  }
}

function numeric(text: string | undefined): number | null {
  const value = text === undefined || text === '' ? NaN : Number(text);
  return Number.isFinite(value) ? value : null;
}

/** Days since day 0 of spreadsheets. */
function dateIn(text: string): number | undefined {
  const match = /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d):(\d\d(?:\.\d+)?))?$/.exec(text);
  if (!match) return undefined;
  const [year = 0, month = 0, date = 0, hours = 0, minutes = 0, seconds = 0] = match
    .slice(1)
    .map((part) => Number(part ?? 0));
  const days = (Date.UTC(year, month - 1, date) - dayZero) / day;
  return days + (hours * 3600 + minutes * 60 + seconds) / 86_400;
}

/** A share of a day. */
function durationIn(text: string): number | undefined {
  const match = /^(-?)PT(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:\.\d+)?)S)?$/.exec(text);
  if (!match) return undefined;
  const [hours = 0, minutes = 0, seconds = 0] = match.slice(2).map((part) => Number(part ?? 0));
  const share = (hours * 3600 + minutes * 60 + seconds) / 86_400;
  return match[1] === '-' ? -share : share;
}
