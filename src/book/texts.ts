import type { Cell, Step } from './types.ts';
import { words } from '../words/words.ts';

/** So long a text of a cell, a note, a title may be: many pages. What is longer stops the screen. */
export const mostText = 100_000;

/** Why these steps are refused: one of the texts that people write is too long. */
export function faultOfTexts(steps: readonly Step[]): string | undefined {
  for (const step of steps)
    for (const text of textsIn(step))
      if (text !== undefined && text.length > mostText)
        return words.book.textTooLong(mostText, text.length);
  return undefined;
}

function* textsIn(step: Step): Iterable<string | undefined> {
  if (step.kind === 'setTitle') yield step.title;
  else if (step.kind === 'setCells') for (const { cell } of step.cells) yield* textsOf(cell);
  else if (step.kind === 'addSheet') {
    for (const { cell } of step.content.cells) yield* textsOf(cell);
    yield* textsAbout(step.content.properties);
  } else if (step.kind === 'setSheet') yield* textsAbout(step.properties);
}

function* textsOf(cell: Cell | null): Iterable<string | undefined> {
  if (cell?.content.kind === 'text') yield cell.content.text;
  yield cell?.typed;
  yield cell?.note;
}
function* textsAbout({
  name,
  title,
  purpose,
}: Partial<Readonly<Record<'name' | 'title' | 'purpose', string>>>): Iterable<string | undefined> {
  yield* [name, title, purpose];
}
