import type { Outcome } from '../commands/command.ts';
import type { Action } from './actions.ts';
import { saveArchive } from './archive.ts';
import type { FileDoor } from './file-door.ts';
import type { Updates } from './offline/updates.ts';
import type { Shelf } from './shelf.ts';
import { words } from '../words/words.ts';

export interface KeptHands extends Pick<
  Shelf,
  'versions' | 'takeOut' | 'emptyBin' | 'forgetMissing' | 'keepWork'
> {
  readonly updates: Updates;
  readonly files: Pick<FileDoor, 'openArchive'>;
  readonly now: () => Date;
  isBookOpen(): boolean;
}

const ok: Outcome = { ok: true };
const idOf = (args: unknown) => (args as { id: string }).id;

/** Actions on what is kept on this device, beside the open book. */
export function keptActions(hands: KeptHands): readonly Action[] {
  return [
    ...versionActions(hands),
    ...binActions(hands),
    ...archiveActions(hands),
    ...updateActions(hands),
  ];
}

function versionActions({ versions, isBookOpen }: KeptHands): readonly Action[] {
  const unavailable = () => (isBookOpen() ? undefined : words.app.openFirst);
  const action = (
    id: string,
    name: string,
    run: Action['run'],
    search: readonly string[] = [],
  ): Action => ({ id, name, group: 'book', search, unavailable, run });
  return [
    action(
      'versions.keep',
      words.kept.keep,
      (args) => versions.keep('named', (args as { name: string }).name),
      ['save point', 'history', 'snapshot'],
    ),
    action('versions.show', words.kept.versions, () => versions.look(), [
      'history',
      'compare',
      'restore',
      'earlier',
      'go back',
    ]),
    action('versions.compare', words.kept.compareVersions, (args) => {
      const { before, after } = args as { before: string; after: string | null };
      return versions.compare(before, after);
    }),
    action(
      'versions.endComparison',
      words.kept.endComparison,
      () => (versions.endComparison(), ok),
    ),
    action('versions.restore', words.kept.restoreVersion, (args) => versions.restore(idOf(args))),
    action('versions.openApart', words.kept.openVersion, (args) => versions.openApart(idOf(args))),
    action('versions.remove', words.kept.removeVersion, (args) => versions.remove(idOf(args))),
  ];
}

function binActions({ takeOut, emptyBin, forgetMissing }: KeptHands): readonly Action[] {
  return [
    {
      id: 'bin.takeOut',
      name: words.kept.takeBook,
      group: 'book',
      run: (args) => takeOut(idOf(args)),
    },
    { id: 'bin.empty', name: words.kept.emptyBin, group: 'book', run: () => emptyBin() },
    {
      id: 'kept.missNoMore',
      name: words.start.missNoMore,
      group: 'book',
      run: () => forgetMissing(),
    },
  ];
}

function archiveActions({ files, now, keepWork }: KeptHands): readonly Action[] {
  return [
    {
      id: 'archive.save',
      name: words.kept.saveArchive,
      group: 'book',
      search: ['backup', 'zip', 'all books'],
      async run() {
        await keepWork();
        return saveArchive(now());
      },
    },
    {
      id: 'archive.open',
      name: words.kept.takeInArchive,
      group: 'book',
      search: ['backup', 'zip', 'restore'],
      run: () => files.openArchive(),
    },
  ];
}

function updateActions({ updates }: KeptHands): readonly Action[] {
  return [
    {
      id: 'app.reload',
      name: words.kept.reloadNew,
      group: 'view',
      async run() {
        const reason = await updates.take();
        return reason === undefined ? ok : { ok: false, reason };
      },
    },
    {
      id: 'app.notNow',
      name: words.kept.noMore,
      group: 'view',
      run: () => (updates.later(), ok),
    },
  ];
}
