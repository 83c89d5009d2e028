import { html } from 'lit-html';
import { Trash2 } from 'lucide-static';
import { mark } from '../bar/mark.ts';
import { icon } from '../kit/icon.ts';
import { signal } from '../kit/signals.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { KeptEntry, StartView, Workbook } from '../workbook.ts';
import { pictureOf } from './pictures.ts';

/** Where one goes on, or begins. */
export function startPage(workbook: Workbook, shell: Shell) {
  if (workbook.page.value !== 'start') return '';
  const { kept, templates, sample, trouble, damaged, busy } = workbook.start.value;
  return html`<main aria-busy=${busy}>
    <header>
      <p class="sign">${mark()}<span>Halfstop</span></p>
      <h1>A lighting workbook</h1>
      <p>
        Write down what the meter says. See how far each point is from the plan, in stops, and what
        closes the gap.
      </p>
    </header>
    ${trouble ? html`<p class="remark" role="alert">${trouble}</p>` : ''}
    ${damaged ? unreadable(damaged, workbook) : ''} ${kept.length > 0 ? goOn(kept, workbook) : ''}
    ${aside(workbook, shell)}
    <section aria-labelledby="begin">
      <h2 id="begin">${kept.length > 0 ? 'or begin' : 'begin'}</h2>
      <ul class="cards">
        ${templates.map((one) =>
          card(one.id, one.title, one.purpose, () =>
            workbook.run(verbs.newBook, { template: one.id }),
          ),
        )}
        ${
          sample
            ? card(
                'harbour-hours',
                'Harbour Hours',
                'A sample book to look round in: the light of a documentary in a sail loft and a boat shed.',
                () => workbook.run(verbs.sample),
              )
            : ''
        }
        ${card('blank', 'Blank book', 'One sheet with nothing in it.', () =>
          workbook.run(verbs.newBook, { template: null }),
        )}
        ${card(
          'file',
          'Open a file',
          'A book somebody saved, or a sheet of another program: xlsx, ods, CSV.',
          () => workbook.run(verbs.openFile),
        )}
      </ul>
    </section>
    <footer>
      Books are kept on this device and nothing is sent anywhere.
      <button class="link" @click=${() => shell.open('about')}>About and licences</button>
    </footer>
  </main>`;
}

function unreadable({ id, reason }: NonNullable<StartView['damaged']>, workbook: Workbook) {
  return html`<p class="remark" role="alert">
    ${reason} What is kept of it stays as it is.
    <button class="link" @click=${() => workbook.run(verbs.saveRaw, { id })}>
      Save it as a file, as it is
    </button>
  </p>`;
}

/** As many books as leave room for what one may begin. */
const few = 8;
const all = signal(false);

function goOn(kept: readonly KeptEntry[], workbook: Workbook) {
  return html`<section aria-labelledby="go-on">
    <h2 id="go-on">go on where you left off</h2>
    <ul class="kept">
      ${(all.value ? kept : kept.slice(0, few)).map(
        (one) =>
          html`<li>
            <button class="kept-book" @click=${() => workbook.run(verbs.openBook, { id: one.id })}>
              <b>${one.title}</b><span>${one.when}</span><span class="size">${one.size}</span>
            </button>
            <button
              class="glyph"
              aria-label="Put ${one.title} in the bin"
              title="Put in the bin"
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
  const { bin, kept } = workbook.start.value;
  const more = kept.length > few && !all.value;
  const binned = bin.length === 1 ? '1 book' : `${bin.length} books`;
  return html`<p class="aside">
    ${
      more
        ? html`<button class="link" @click=${() => (all.value = true)}>
            Show all ${kept.length} books
          </button>`
        : ''
    }
    ${
      bin.length > 0
        ? html`<button class="link" @click=${() => shell.open('bin')}>Bin: ${binned}</button>`
        : ''
    }
    ${
      kept.length > 0
        ? html`<button class="link" @click=${() => workbook.run(verbs.saveArchive)}>
            Save everything as an archive
          </button>`
        : ''
    }
    <button class="link" @click=${() => workbook.run(verbs.openArchive)}>Take in an archive</button>
  </p>`;
}

function card(picture: string, title: string, purpose: string, go: () => void) {
  return html`<li>
    <button class="card" @click=${go}>
      ${pictureOf(picture)}<b>${title}</b><span>${purpose}</span>
    </button>
  </li>`;
}
