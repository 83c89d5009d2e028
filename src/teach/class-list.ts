import { readTable, split } from '../files/table.ts';

/** Captions that name learners, in languages that class lists come in. */
const nameCaption = /^(name|learner|student|pupil|full name)$/i;

/** The names in a list: the column Name where there is one, else the first; a caption alone is none. */
export function namesIn(text: string): readonly string[] {
  const rows = readTable(text)?.rows ?? split(text.replace(/^\uFEFF/, ''), ',');
  const [head = [], ...rest] = rows;
  const column = head.findIndex((cell) => nameCaption.test(cell.trim()));
  const named = column >= 0 ? rest : rows;
  return named.map((row) => row[Math.max(0, column)]?.trim() ?? '').filter(Boolean);
}
