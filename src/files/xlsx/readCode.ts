import type { NumberLook } from '../plain/types.ts';

/** Dates and clock times by the letters that stand outside quotes. */
const dateLetters = /[yd]|m{3}/i;
const clockLetters = /[hs]/i;

/** What a number format code says; `undefined` for one that says nothing (General, text). */
export function readCode(code: string): NumberLook | undefined {
  if (code === '' || /^(?:general|@)$/i.test(code)) return undefined;
  const sections = sectionsOf(code);
  const last = sections.some(({ condition }) => condition) ? sections.at(-1) : sections[0];
  if (!last) return undefined;
  const { parts } = last;
  const bare = parts
    .filter(({ quoted }) => !quoted)
    .map(({ text }) => text)
    .join('');
  const date = dateLetters.test(bare.replace(/general/gi, ''));
  const clock = clockLetters.test(bare.replace(/general/gi, ''));
  if (date || clock) return { moment: date && clock ? 'dateTime' : date ? 'date' : 'time' };
  return numberLook(parts);
}

interface Part {
  readonly text: string;
  readonly quoted: boolean;
}

/** Sections stand between semicolons; brackets hold conditions, colours, currencies. */
function sectionsOf(code: string): { parts: Part[]; condition: boolean }[] {
  const sections: { parts: Part[]; condition: boolean }[] = [{ parts: [], condition: false }];
  const pattern = /"([^"]*)"|\\(.)|_.|\*.|\[([^\]]*)\]|(;)|([^"\\_*[;]+)/gsu;
  for (const [, quoted, escaped, bracket, semicolon, bare] of code.matchAll(pattern)) {
    const section = sections.at(-1);
    if (semicolon !== undefined) sections.push({ parts: [], condition: false });
    else if (!section) continue;
    else if (bracket !== undefined) {
      if (/^[<>=]/.test(bracket)) section.condition = true;
      const currency = /^\$([^-]+)/.exec(bracket)?.[1];
      if (currency !== undefined) section.parts.push({ text: currency, quoted: true });
      else if (/^[hms]+$/i.test(bracket)) section.parts.push({ text: bracket, quoted: false });
    } else if (quoted !== undefined || escaped !== undefined) {
      section.parts.push({ text: quoted ?? escaped ?? '', quoted: true });
    } else if (bare !== undefined) section.parts.push({ text: bare, quoted: false });
  }
  return sections;
}

const placeholders = /general|[#0?][#0?,]*(?:\.([#0?]*))?/i;

function numberLook(parts: readonly Part[]): NumberLook | undefined {
  let before = '';
  let after = '';
  let digits: string | undefined;
  let percent = false;
  let thousands = false;
  const put = (text: string) => {
    if (digits === undefined) before += text;
    else after += text;
  };
  for (const { text, quoted } of parts) {
    const found = quoted || digits !== undefined ? null : placeholders.exec(text);
    if (!found) put(quoted ? text : rest(text));
    else {
      put(rest(text.slice(0, found.index)));
      digits = /general/i.test(found[0]) ? '' : (found[1] ?? '0');
      if (found[1] === undefined && digits !== '') digits = 'none';
      thousands = found[0].includes(',');
      put(rest(text.slice(found.index + found[0].length)));
    }
    percent ||= !quoted && text.includes('%');
  }
  if (digits === undefined) return undefined;
  const signed = before.startsWith('+');
  const opening = before.replace(/^\+/, '');
  return {
    ...(digits !== '' && { decimals: digits === 'none' ? 0 : digits.length }),
    ...(opening !== '' && { before: opening }),
    ...(after !== '' && { after }),
    ...(percent && { percent: true as const }),
    ...(signed && { signed: true as const }),
    ...(thousands && { thousands: true as const }),
  };
}

/** A percent sign is said apart. */
const rest = (text: string) => text.replaceAll('%', '');
