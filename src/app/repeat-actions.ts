import { readAs } from '../../functions/quantities/index.ts';
import { mostCharacters, readRecord, writeRecord } from '../book/form/recordfile.ts';
import { addRecord, removeRecord } from '../book/make/records.ts';
import { lightsIn, photosOfRecord, recordsOf, type Record } from '../book/records.ts';
import { writingSettings } from '../book/settings.ts';
import { wallClock } from '../book/wallClock.ts';
import type { Means } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { carryOut } from '../commands/doing.ts';
import { signal } from '../panels/kit/signals.ts';
import type { Workbook } from '../panels/workbook.ts';
import { logSetUp } from '../repeat/log.ts';
import { recordOf } from '../repeat/record.ts';
import { makeSheet } from '../repeat/sheet/make.ts';
import { rebuildSheet } from '../repeat/sheet/rebuild.ts';
import { reportSheet } from '../repeat/sheet/report.ts';
import { setOut } from '../repeat/sheet/setOut.ts';
import type { Told } from '../repeat/screen/seam.ts';
import { words } from '../words/words.ts';
import { lastMeter } from '../walk/meters.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import { askForFile, saveText } from './file-dialog.ts';
import { withOpenBook } from './with-desk.ts';
import { lookAt } from './look-at.ts';

export interface RepeatHands {
  readonly means: Means;
  readonly now: () => Date;
  workbook(): Workbook;
  desk(): Desk | null;
  act(id: string): Outcome;
  tell(outcome: Outcome): void;
}

const ending = 'halfstop-record.json';

/** Records of set-ups, and what is made from them. */
export function repeatActions(hands: RepeatHands): readonly Action[] {
  const { unavailable, withDesk } = withOpenBook(() => hands.desk());
  return [
    {
      id: 'repeat.record',
      name: words.repeat.record,
      group: 'book',
      search: ['freeze', 'keep the light', 'continuity', 'repeat', 'snapshot'],
      unavailable,
      run: withDesk((desk, told) => record(hands, desk, (told ?? {}) as Told)),
    },
    {
      id: 'repeat.log',
      name: words.log.log,
      group: 'book',
      search: ['continuity', 'scene', 'set-up log', 'report', 'note down', 'keep the light'],
      unavailable,
      run: withDesk((desk) => {
        const { sheet } = desk.session.state;
        const made = logSetUp(lookAt(desk), hands.means, sheet, wallClock(hands.now()));
        return carryOut(desk, made, 'says' in made ? made.says : undefined);
      }),
    },
    {
      id: 'repeat.records',
      name: words.repeat.records,
      group: 'book',
      search: ['rebuild', 'match', 'continuity', 'repeat', 'reference', 'recorded'],
      unavailable,
      run: withDesk((desk) => showRecords(hands, desk)),
    },
    {
      id: 'repeat.setOut',
      name: words.repeat.setOut,
      group: 'cells',
      search: ['rebuild', 'advice', 'correct', 'close the gap', 'scrim', 'dim', 'move the lamp'],
      unavailable,
      run: withDesk((desk) => {
        const made = setOut(lookAt(desk), hands.means, desk.session.state.sheet);
        return carryOut(desk, made, 'says' in made ? made.says : undefined);
      }),
    },
  ];
}

function rebuild({ means }: RepeatHands, desk: Desk, one: Record): Outcome {
  const plan = rebuildSheet(one);
  const made = makeSheet(desk.book.document, means, plan, words.repeat.rebuild);
  const outcome = carryOut(desk, made, words.repeat.madeRebuild(one.name));
  if (outcome.ok && made.ok) desk.session.show(made.sheet);
  return outcome;
}

/** The sheet in view, as it reads now, against a record: a sheet of its own that stays as it is. */
function report({ means, now }: RepeatHands, desk: Desk, one: Record): Outcome {
  const as = { ...suggestedOn(desk), ...wallClock(now()) };
  const today = recordOf(lookAt(desk), desk.session.state.sheet, as);
  if (!today.ok) return today;
  const plan = reportSheet(one, today.record);
  const made = makeSheet(desk.book.document, means, plan, words.repeat.report);
  const outcome = carryOut(desk, made, words.repeat.madeReport(one.name, as.name));
  if (outcome.ok && made.ok) desk.session.show(made.sheet);
  return outcome;
}

/** The name of the sheet in view: that is how people call a set-up. */
function suggestedOn({ book, session }: Desk) {
  const { title = '', name = '' } = book.document.sheet(session.state.sheet)?.properties ?? {};
  return { name: title || name, place: title || name };
}

function record({ means, now }: RepeatHands, desk: Desk, told: Told): Outcome {
  const as = { ...suggestedOn(desk), ...told, ...wallClock(now()) };
  const recorded = recordOf(lookAt(desk), desk.session.state.sheet, as);
  if (!recorded.ok) return recorded;
  const made = addRecord(desk.book.document, means, recorded.record);
  const { points } = recorded.record;
  return carryOut(
    desk,
    made,
    words.repeat.recorded(made.name, points.length, lightsIn(recorded.record)),
  );
}

async function showRecords(hands: RepeatHands, desk: Desk): Promise<Outcome> {
  const { recordsDialog } = await import('../repeat/screen/records.ts');
  const { book } = desk;
  const records = signal(recordsOf(book.document));
  /** Tells of it, and gives the reason where it was not done. */
  const done = (outcome: Outcome): string | undefined => {
    records.value = recordsOf(book.document);
    if (!outcome.ok) return outcome.reason;
    hands.tell(outcome);
    return undefined;
  };
  const writing = writingSettings(book.document.settings);
  recordsDialog(
    {
      records,
      suggested: {
        ...suggestedOn(desk),
        meter: lastMeter(book.document, desk.session.state.sheet),
      },
      record: (told) => done(record(hands, desk, told)),
      remove: (id) =>
        void done(carryOut(desk, removeRecord(book.document, id), words.repeat.removed)),
      save: (one) => void save(desk, one),
      open: async () => done(await takeIn(hands, desk)),
      walk: () => void hands.act('walk.open'),
      makes: [
        { name: words.repeat.rebuild, make: (one) => done(rebuild(hands, desk, one)) },
        { name: words.repeat.report, make: (one) => done(report(hands, desk, one)) },
      ],
      stops(text) {
        const read = readAs('stops', text, writing);
        return read.ok ? read.value : undefined;
      },
    },
    hands.workbook(),
    writing,
  );
  return { ok: true };
}

async function save({ photos }: Desk, one: Record): Promise<void> {
  const pictures = await photos.files(photosOfRecord(one));
  saveText(one.name, ending, 'application/json', writeRecord(one, pictures));
}

/** A record out of a file, whole with its pictures, or nothing of it. */
async function takeIn({ means }: RepeatHands, desk: Desk): Promise<Outcome> {
  const file = await askForFile('.json,application/json');
  if (!file) return { ok: true };
  if (file.size > mostCharacters) return { ok: false, reason: words.repeat.fileLarge };
  const read = readRecord(await file.text());
  if (!read.ok) return read;
  const made = addRecord(desk.book.document, means, read.record);
  if (!made.ok) return made;
  await desk.photos.takeIn(read.photos);
  const label = words.repeat.takeInOne(made.name);
  const transaction = { ...made.transaction, label };
  return carryOut(desk, { ...made, transaction }, words.repeat.takenIn(made.name));
}
