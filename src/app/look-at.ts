import { writingSettings } from '../book/settings.ts';
import type { Look } from '../panels/views/look.ts';
import type { Desk } from './desk.ts';

/** The book on the desk as views look at it. */
export const lookAt = (now: Desk): Look => ({
  document: now.book.document,
  engine: now.engine,
  remarksAt: now.remarksAt,
  writing: writingSettings(now.book.document.settings),
});
