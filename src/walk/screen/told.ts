import { spelled } from '../../panels/kit/spelled.ts';
import type { Scene } from './scene.ts';
import { words } from '../../words/words.ts';

/** What a screen reader hears: how the reading came out, or where one has come to. */
export function told({ reading, standing }: Scene, kept: boolean): string {
  const { verdict, also, wanted, value } = standing;
  const read = [value.text, value.unit].filter(Boolean).join(' ');
  const out = [verdict?.words, also?.words].filter(Boolean).join(', ');
  if (kept) return spelled(`${reading.label}: ${read}, ${out || words.walk.kept}`);
  const goal = wanted.length > 0 ? `, ${words.walk.wantedGoal(wanted.join(', '))}` : '';
  const now = read === '' ? words.walk.noReading : [read, out].filter(Boolean).join(', ');
  return spelled(`${reading.label}${goal}, ${now}`);
}
