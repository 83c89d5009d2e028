import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../root.mjs';
import { writeBook } from '../../book/form/write.ts';

/** The book of each template, from the plan beside it. */
export async function generate() {
  const folder = join(root, 'templates');
  const names = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return Promise.all(
    names.map(async ({ name }) => {
      const { build } = await import(join(folder, name, 'plan.ts'));
      return { path: `templates/${name}/book.json`, text: writeBook(build().document) };
    }),
  );
}
