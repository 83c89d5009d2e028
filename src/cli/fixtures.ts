import { addFixtures, removeFixture } from '../book/make/fixtures.ts';
import type { Made } from '../book/make/made.ts';
import { fixturesOf, keyOf } from '../book/fixtures.ts';
import type { Book } from '../book/types.ts';
import { tableText } from '../files/in/bytes.ts';
import { takeFile, tiltFileOf } from '../files/photometric/take.ts';
import { contentOf } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io } from './types.ts';

/** Puts photometric files on the shelf of a book, each under its name, in place of one of that name. */
export async function putFixtures(book: Book, given: readonly string[], io: Io): Promise<void> {
  let count = 0;
  const means = { newId: () => `fixture-${String(++count)}` };
  for (const one of given) {
    const [, name = '', path = ''] = /^([^=]*)=(.*)$/s.exec(one) ?? [];
    if (name.trim() === '' || path === '')
      throw new Unusable(words.commandLine.wantsNot('fixture', words.commandLine.nameFile, one));
    const content = await contentOf(path, io);
    const tilt = await tiltBeside(path, content, io);
    const taken = takeFile({ name: path, content }, name.trim(), tilt);
    if (!taken.ok) throw new Unusable(`${path}: ${taken.reason}`);
    for (const note of taken.notes) io.err(`${path}: ${note}\n`);
    const before = fixturesOf(book.document).find((kept) => keyOf(kept.name) === keyOf(name));
    if (before) runMade(book, removeFixture(book.document, before.id));
    runMade(book, addFixtures(book.document, means, [taken.fixture]));
  }
}

/** Carries out what a maker made, or ends with its reason. */
export function runMade(book: Book, made: Made): void {
  const ran = made.ok ? book.run(made.transaction) : made;
  if (!ran.ok) throw new Unusable(ran.reason);
}

/** A tilt file lies beside the file that names it; one that is missing is said in a note. */
async function tiltBeside(path: string, content: Uint8Array, io: Io): Promise<string | undefined> {
  const named = tiltFileOf(tableText(content));
  if (named === undefined || /[/\\]/.test(named)) return undefined;
  try {
    return tableText(await io.readFile(path.replace(/[^/\\]*$/, named)));
  } catch {
    return undefined;
  }
}
