import { exercisesOf, type Exercise } from '../book/exercises.ts';
import { readBook } from '../book/form/read.ts';
import type { Document } from '../book/types.ts';
import { tableText } from '../files/in/bytes.ts';
import { namesIn } from '../teach/class-list.ts';
import { alikeNeighbours, handoutsFor, learnersFrom, type HandoutFile } from '../teach/handouts.ts';
import { Undeliverable } from '../teach/undeliverable.ts';
import { keyTable, keyText, newClass } from '../teach/key.ts';
import { newSalt } from '../teach/salt.ts';
import { exerciseIds, exerciseBook } from '../teach/set/set.ts';
import { contentOf, countingMeans } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io, type Subcommand } from './types.ts';

export const handouts: Subcommand = {
  name: 'handouts',
  usage: words.teach.handoutsHelp.usage,
  summary: words.teach.handoutsHelp.summary,
  options: {
    seed: words.teach.aSeed,
    out: words.teach.aFolder,
    sheet: words.commandLine.sheetName,
  },
  anywhere: true,
  async run({ options, rest }, io) {
    const [list, source, more] = rest;
    if (list === undefined || source === undefined || more !== undefined)
      throw new Unusable(words.teach.wantsClass);
    const { seed, out } = options;
    if (seed === undefined) throw new Unusable(words.commandLine.wants('seed', words.teach.aSeed));
    if (out === undefined) throw new Unusable(words.commandLine.wants('out', words.teach.aFolder));
    const names = namesIn(tableText(await contentOf(list, io)));
    const { document, exercise } = await exerciseIn(source, options['sheet'], io);
    const files = await deliver(document, exercise, { seed, names, out }, io);
    for (const { one, other } of alikeNeighbours(files))
      io.err(`${words.teach.alike(one, other)}\n`);
    io.out(`${words.teach.written(files.length, out)}\n`);
    return 0;
  },
};

async function deliver(
  document: Document,
  exercise: Exercise,
  { seed, names, out }: { seed: string; names: readonly string[]; out: string },
  io: Io,
): Promise<readonly HandoutFile[]> {
  try {
    const klass = newClass(countedFrom(document), exercise, seed, learnersFrom(names), newSalt());
    const files: HandoutFile[] = [];
    for (const file of handoutsFor(document, exercise, klass)) {
      await io.writeFile(`${out}/handouts/${file.name}`, file.text);
      files.push(file);
    }
    await io.writeFile(`${out}/key/KEY.json`, keyText(document, klass));
    await io.writeFile(`${out}/key/answers.csv`, keyTable(document, files));
    return files;
  } catch (fault) {
    if (fault instanceof Undeliverable) throw new Unusable(fault.message);
    throw fault;
  }
}

/** Ids that the book’s exercises do not have. */
function countedFrom(document: Document) {
  const taken = new Set(document.shelf('exercises').items.map(({ id }) => id));
  let count = 0;
  return {
    newId() {
      do count += 1;
      while (taken.has(`class-${String(count)}`));
      return `class-${String(count)}`;
    },
  };
}

async function exerciseIn(
  source: string,
  sheet: string | undefined,
  io: Io,
): Promise<{ document: Document; exercise: Exercise }> {
  const document = exerciseIds.includes(source)
    ? exerciseBook(source, countingMeans())
    : await opened(source, io);
  const all = exercisesOf(document);
  const nameOf = (one: Exercise) => document.sheet(one.sheet)?.properties.name ?? '';
  const found = sheet === undefined ? all : all.filter((one) => nameOf(one) === sheet);
  const [exercise, another] = found;
  if (!exercise) throw new Unusable(words.teach.noneHere(source, exerciseIds.join(', ')));
  if (another) throw new Unusable(words.teach.severalExercises(all.map(nameOf).join(', ')));
  return { document, exercise };
}

async function opened(path: string, io: Io): Promise<Document> {
  const read = readBook(tableText(await contentOf(path, io)));
  if (!read.ok) throw new Unusable(`${path}: ${read.reason}`);
  return read.document;
}
