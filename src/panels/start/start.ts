import { html } from 'lit-html';
import { Trash2 } from 'lucide-static';
import { mark } from '../bar/mark.ts';
import { icon } from '../kit/icon.ts';
import { signal } from '../kit/signals.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { KeptEntry, StartView } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { pictureOf } from './pictures.ts';
import { words } from '../../words/words.ts';

/** Where one goes on, or begins. */
export function startPage(workbook: Workbook, shell: Shell) {
  if (workbook.page.value !== 'start') return '';
  const { kept, templates, sample, trouble, missing, damaged, busy } = workbook.start.value;
  return html`<main aria-busy=${busy}>
    <header>
      <p class="sign">${mark()}<span>${words.start.name}</span></p>
      <h1>${words.start.what}</h1>
      <p>${words.start.how}</p>
    </header>
    ${trouble ? html`<p class="remark" role="alert">${trouble}</p>` : ''}
    ${missing ? cleared(missing, workbook) : ''} ${damaged ? unreadable(damaged, workbook) : ''}
    ${kept.length > 0 ? goOn(kept, workbook) : ''} ${aside(workbook, shell)}
    <section aria-labelledby="begin">
      <h2 id="begin">${kept.length > 0 ? words.start.begin : words.start.justBegin}</h2>
      <ul class="cards">
        ${
          sample
            ? card('harbour-hours', 'Harbour Hours', words.start.sample, () =>
                workbook.run(verbs.sample),
              )
            : ''
        }
        ${card('blank', words.start.blank, words.start.blankHelp, () =>
          workbook.run(verbs.newBook, { template: null }),
        )}
        ${card('file', words.start.open, words.start.openHelp, () => workbook.run(verbs.openFile))}
        ${templates.map((one) =>
          card(one.id, one.title, one.purpose, () =>
            workbook.run(verbs.newBook, { template: one.id }),
          ),
        )}
      </ul>
    </section>
    <footer>
      ${words.start.kept}
      <button class="link" @click=${() => shell.open('about')}>${words.start.about}</button>
    </footer>
  </main>`;
}

function unreadable({ id, reason }: NonNullable<StartView['damaged']>, workbook: Workbook) {
  return html`<p class="remark" role="alert">
    ${reason} ${words.start.staysAsItIs}
    <button class="link" @click=${() => workbook.run(verbs.saveRaw, { id })}>
      ${words.start.saveAsItIs}
    </button>
  </p>`;
}

function cleared(missing: string, workbook: Workbook) {
  const link = (verb: string, label: string) =>
    html`<button class="link" @click=${() => workbook.run(verb)}>${label}</button>`;
  return html`<p class="remark" role="alert">
    ${missing} ${link(verbs.openArchive, words.start.takeInArchive)}
    ${link(verbs.openFile, words.start.openSaved)} ${link(verbs.missNoMore, words.start.missNoMore)}
  </p>`;
}

/** As many books as leave room for what one may begin. */
const few = 8;
const all = signal(false);

function goOn(kept: readonly KeptEntry[], workbook: Workbook) {
  return html`<section aria-labelledby="go-on">
    <h2 id="go-on">${words.start.goOn}</h2>
    <ul class="kept">
      ${(all.value ? kept : kept.slice(0, few)).map(
        (one) =>
          html`<li>
            <button class="kept-book" @click=${() => workbook.run(verbs.openBook, { id: one.id })}>
              <b>${one.title}</b><span>${one.when}</span><span class="size">${one.size}</span>
            </button>
            <button
              class="glyph"
              aria-label=${words.start.toBin(one.title)}
              title=${words.start.toTheBin}
              @click=${() => workbook.run(verbs.removeBook, { id: one.id })}
            >
              ${icon(Trash2)}
            </button>
          </li>`,
      )}
    </ul>
  </section>`;
}

/** What is not in the list: the bin, and everything at once. */
function aside(workbook: Workbook, shell: Shell) {
  const { bin, kept, missing } = workbook.start.value;
  const more = kept.length > few && !all.value;
  const binned = words.start.binHolds(bin.length);
  return html`<p class="aside">
    ${
      more
        ? html`<button class="link" @click=${() => (all.value = true)}>
            ${words.start.showAll(kept.length)}
          </button>`
        : ''
    }
    ${
      bin.length > 0
        ? html`<button class="link" @click=${() => shell.open('bin')}>
            ${words.start.bin} ${binned}
          </button>`
        : ''
    }
    ${
      kept.length > 0
        ? html`<button class="link" @click=${() => workbook.run(verbs.saveArchive)}>
            ${words.start.saveEverything}
          </button>`
        : ''
    }
    ${
      missing === undefined
        ? html`<button class="link" @click=${() => workbook.run(verbs.openArchive)}>
            ${words.start.takeInArchive}
          </button>`
        : ''
    }
  </p>`;
}

function card(picture: string, title: string, purpose: string, go: () => void) {
  return html`<li>
    <button class="card" @click=${go}>
      ${pictureOf(picture)}<b>${title}</b><span>${purpose}</span>
    </button>
  </li>`;
}
