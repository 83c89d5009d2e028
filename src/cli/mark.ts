import { readBook } from '../book/form/read.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document } from '../book/types.ts';
import { tableText } from '../files/in/bytes.ts';
import { feedbackText } from '../teach/feedback.ts';
import { freeFile } from '../teach/handouts.ts';
import { classesIn, marking, type MarkedClass } from '../teach/mark.ts';
import { csvOf, marksTable, wrongGroups } from '../teach/report.ts';
import type { ReturnedFile } from '../teach/returned.ts';
import { Undeliverable } from '../teach/undeliverable.ts';
import { contentOf } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io, type Subcommand } from './types.ts';

export const mark: Subcommand = {
  name: 'mark',
  usage: words.teach.markHelp.usage,
  summary: words.teach.markHelp.summary,
  options: { feedback: words.teach.aFolder },
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
    const marked = markedBy(read.document, handed, files);
    const writing = writingSettings(read.document.settings);
    const { feedback } = options;
    if (feedback !== undefined) await writeFeedback(feedback, read.document, marked, io);
    io.out(options['csv'] === undefined ? summary(marked) : csvOf(marksTable(marked, writing)));
    for (const file of marked.files)
      if (file.kind !== 'counted') io.err(`${file.path}: ${file.says}\n`);
    return marked.files.every(({ kind }) => kind === 'counted' || kind === 'renamed') ? 0 : 1;
  },
};

function markedBy(...asked: Parameters<typeof marking>): MarkedClass {
  try {
    const marks = marking(...asked);
    let step = marks.next();
    while (!step.done) step = marks.next();
    return step.value;
  } catch (fault) {
    if (fault instanceof Undeliverable) throw new Unusable(fault.message);
    throw fault;
  }
}

/** A text for each learner who returned something. */
async function writeFeedback(
  folder: string,
  document: Document,
  marked: MarkedClass,
  io: Io,
): Promise<void> {
  const { title = '', name = '' } = document.sheet(marked.exercise.sheet)?.properties ?? {};
  const taken = new Set<string>();
  for (const one of marked.learners) {
    if (one.path === undefined) continue;
    const text = feedbackText(title || name, marked, one, writingSettings(document.settings));
    await io.writeFile(`${folder}/${freeFile(one.learner, taken)}.txt`, text);
  }
}

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
