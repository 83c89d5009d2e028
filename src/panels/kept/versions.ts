import { html } from 'lit-html';
import { ArrowLeft, EllipsisVertical } from 'lucide-static';
import { openDialogBox } from '../kit/dialog.ts';
import { icon } from '../kit/icon.ts';
import { openMenu } from '../kit/menu.ts';
import { verbs } from '../verbs.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { comparison } from './comparison.ts';
import type { VersionEntry } from './view.ts';
import { words } from '../../words/words.ts';

/** The versions of the open book: what changed, compare, restore. A comparison takes their place. */
export function versions(workbook: Workbook, shell: Shell): void {
  workbook.run(verbs.endComparison);
  workbook.run(verbs.showVersions);
  openDialogBox({ title: words.kept.versions, className: 'wide-box' }, (close) => {
    const compared = workbook.comparison.value;
    if (compared)
      return html`<div class="box-body">
        <button class="button" @click=${() => workbook.run(verbs.endComparison)}>
          ${icon(ArrowLeft)} ${words.kept.allVersions}
        </button>
        ${comparison(compared)}
      </div>`;
    const { busy, versions: all, trouble } = workbook.versions.value;
    return html`<div class="box-body" aria-busy=${busy}>
      <p class="faint">${words.kept.versionsHelp}</p>
      ${trouble ? html`<p class="remark" role="alert">${trouble}</p>` : ''}
      ${
        all.length > 0
          ? html`<ul class="versions">
              ${all.map((version, index) => row(version, all[index + 1], workbook, close))}
            </ul>`
          : busy || trouble
            ? ''
            : html`<p class="none">${words.kept.none}</p>`
      }
      <div class="row end">
        <button
          class="button lit"
          @click=${() => {
            close();
            shell.open('keep-version');
          }}
        >
          ${words.kept.keep}
        </button>
      </div>
    </div>`;
  });
}

function row(
  version: VersionEntry,
  earlier: VersionEntry | undefined,
  workbook: Workbook,
  close: () => void,
) {
  const { id, title, when, named, size, changes } = version;
  const compare = (before: string, after: string | null) =>
    workbook.run(verbs.compareVersions, { before, after });
  const more = (event: Event) =>
    openMenu(event.currentTarget as HTMLElement, title, [
      ...(earlier ? [{ name: words.kept.compareBefore, run: () => compare(earlier.id, id) }] : []),
      {
        name: words.kept.openOwn,
        run: () => {
          close();
          workbook.run(verbs.openVersion, { id });
        },
      },
      'line',
      { name: words.kept.remove, run: () => workbook.run(verbs.removeVersion, { id }) },
    ]);
  return html`<li>
    <div>
      <b class=${named ? 'named' : ''}>${title}</b>
      <span>${when} · ${size}</span>
      ${changes ? html`<span class="changes">${changes}</span>` : ''}
    </div>
    <span class="verbs">
      <button
        class="button"
        aria-label=${words.kept.compare(title, when)}
        @click=${() => compare(id, null)}
      >
        ${words.kept.compareNow}
      </button>
      <button
        class="button"
        aria-label=${words.kept.restoreOne(title, when)}
        @click=${() => {
          close();
          workbook.run(verbs.restoreVersion, { id });
        }}
      >
        ${words.kept.restore}
      </button>
      <button
        class="glyph"
        aria-label=${words.kept.more(title, when)}
        aria-haspopup="menu"
        @click=${more}
      >
        ${icon(EllipsisVertical)}
      </button>
    </span>
  </li>`;
}
