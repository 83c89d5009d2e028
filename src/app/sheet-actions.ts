import { copyOf } from '../book/content.ts';
import { figuresOn } from '../book/figures.ts';
import { fixturesOf } from '../book/fixtures.ts';
import { figuresFor } from '../book/make/figures.ts';
import type { Action } from './actions.ts';
import type { AppHands } from './app-hands.ts';
import { readTemplate, templateAsked } from './read-template.ts';
import { words } from '../words/words.ts';

/** A new sheet, blank or from a template with its figures and fixtures. */
export function addSheetAction(
  hands: Pick<AppHands, 'act' | 'newId'>,
  needsBook: () => string | undefined,
): Action {
  return {
    id: 'sheet.add',
    name: words.app.addSheet,
    group: 'sheets',
    search: ['template', 'new sheet'],
    unavailable: needsBook,
    async run(args) {
      const template = templateAsked(args);
      if (template === null) return hands.act('sheet.addContent', undefined);
      const read = await readTemplate(template);
      if (!read.ok) return read;
      const first = read.document.sheets[0];
      const content = first && copyOf(read.document, first.id, hands.newId());
      if (!content) return hands.act('sheet.addContent', undefined);
      const own = figuresOn(read.document, first.id);
      const figures = figuresFor(own, hands, first.id, content.id);
      const fixtures = fixturesOf(read.document);
      return hands.act('sheet.addContent', { content, figures, fixtures });
    },
  };
}
