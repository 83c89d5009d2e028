import { readBook } from '../book/form/read.ts';
import { templateText } from './templates.ts';
import { words } from '../words/words.ts';

/** The book of a template, or why it cannot be had. */
export async function readTemplate(id: string): Promise<ReturnType<typeof readBook>> {
  const text = await templateText(id);
  return text === undefined ? { ok: false, reason: words.app.notInVersion } : readBook(text);
}

/** The template that a command was asked for; null for none. */
export const templateAsked = (args: unknown): string | null =>
  args === undefined ? null : (args as { template: string | null }).template;
