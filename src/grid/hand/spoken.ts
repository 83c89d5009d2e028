import type { CellPicture, CellRole, VerdictShape } from '../contract.ts';
import { words } from '../../words/words.ts';

const verdictWords: Readonly<Record<VerdictShape, string>> = {
  over: 'over',
  under: 'under',
  agrees: 'agrees',
  waits: 'waiting',
  clips: 'clips',
};

const roleWords: Readonly<Record<CellRole, string>> = {
  reading: 'reading',
  choice: 'choice',
  given: 'given',
  answer: words.grid.answer,
};

/**
 * What a screen reader says for a cell: value and unit, the verdict's word unless the text says it
 * already, then what is otherwise only seen as a mark.
 */
export function spokenCell(picture: CellPicture): string {
  const { text, unit, verdict, role, state, described, remark, note } = picture;
  const value = unit ? `${text} ${unit}` : text;
  const parts = [value];
  if (verdict && !value.includes(verdictWords[verdict])) parts.push(verdictWords[verdict]);
  if (state === 'error' && !described) parts.push('error');
  if (described) parts.push(described);
  if (role) parts.push(roleWords[role]);
  if (remark) parts.push(words.grid.remark);
  if (note) parts.push(words.grid.note);
  return parts.filter((part) => part !== '').join(', ');
}
