import { spelled } from '../../panels/kit/spelled.ts';
import type { Scene } from './scene.ts';

/** What a screen reader hears: how the reading came out, or where one has come to. */
export function told({ reading, standing }: Scene, kept: boolean): string {
  const { verdict, also, wanted, value } = standing;
  const read = [value.text, value.unit].filter(Boolean).join(' ');
  const words = [verdict?.words, also?.words].filter(Boolean).join(', ');
  if (kept) return spelled(`${reading.label}: ${read}, ${words || 'kept'}`);
  const goal = wanted.length > 0 ? `, wanted ${wanted.join(', ')}` : '';
  const now = read === '' ? 'no reading yet' : [read, words].filter(Boolean).join(', ');
  return spelled(`${reading.label}${goal}, ${now}`);
}
