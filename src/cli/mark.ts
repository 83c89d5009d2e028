import { readBook } from '../book/form/read.ts';
import { writingSettings } from '../book/settings.ts';
import { tableText } from '../files/in/bytes.ts';
import { classesIn, marking, type MarkedClass } from '../teach/mark.ts';
import { csvOf, marksTable, wrongGroups } from '../teach/report.ts';
import type { ReturnedFile } from '../teach/returned.ts';
import { contentOf } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io, type Subcommand } from './types.ts';

export const mark: Subcommand = {
  name: 'mark',
  usage: words.teach.markHelp.usage,
  summary: words.teach.markHelp.summary,
  options: {},
  flags: ['csv'],
  anywhere: true,
  async run({ options, rest }, io) {
    const [path, ...returned] = rest;
    if (path === undefined || returned.length === 0) throw new Unusable(words.teach.wantsKey);
    const read = readBook(tableText(await contentOf(path, io)));
    if (!read.ok) throw new Unusable(`${path}: ${read.reason}`);
    const [handed] = classesIn(read.document);
    if (!handed) throw new Unusable(words.teach.noClass(path));
    const files = await filesAt(returned, io);
    const marks = marking(read.document, handed, files);
    let step = marks.next();
    while (!step.done) step = marks.next();
    const marked = step.value;
    const writing = writingSettings(read.document.settings);
    io.out(options['csv'] === undefined ? summary(marked) : csvOf(marksTable(marked, writing)));
    for (const file of marked.files)
      if (file.kind !== 'counted') io.err(`${file.path}: ${file.says}\n`);
    return marked.files.every(({ kind }) => kind === 'counted' || kind === 'renamed') ? 0 : 1;
  },
};

async function filesAt(paths: readonly string[], io: Io): Promise<readonly ReturnedFile[]> {
  const all: string[] = [];
  for (const path of paths) all.push(...((await io.filesIn(path)) ?? [path]));
  const files: ReturnedFile[] = [];
  for (const path of new Set(all)) files.push({ path, bytes: await contentOf(path, io) });
  return files;
}

/** A line for each learner, then the wrong answers that several gave. */
function summary(marked: MarkedClass): string {
  const learners = marked.learners.map(({ learner, path, points }) =>
    words.teach.learnerLine(
      learner,
      path === undefined ? words.teach.nothingReturned : words.teach.pointsOf(points, marked.most),
    ),
  );
  const groups = wrongGroups(marked).map(({ question, mistake, typed, learners: who }) =>
    words.teach.groupLine(question + 1, mistake ?? words.teach.unknown, typed, who.join(', ')),
  );
  return `${[...learners, ...(groups.length > 0 ? ['', ...groups] : [])].join('\n')}\n`;
}
