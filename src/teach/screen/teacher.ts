import { html } from 'lit-html';
import { waiting } from '../../panels/files/waiting.ts';
import { fieldsOf, openDialogBox } from '../../panels/kit/dialog.ts';
import { signal } from '../../panels/kit/signals.ts';
import { words } from '../../words/words.ts';
import { authorForm } from './author.ts';
import { droppedFiles } from './dropped.ts';
import { marksView } from './marks.ts';
import type { Offered, Taught, TeacherSeam } from './seam.ts';

type Tab = 'sheets' | 'ask' | 'out' | 'marks';

/** For a teacher: sheets to add, what is asked, handing out, marking. */
export function teacherDialog(seam: TeacherSeam): void {
  const tab = signal<Tab>(seam.taught.value ? 'out' : 'sheets');
  const refused = signal('');
  const say = (reason: string | undefined) => (refused.value = reason ?? '');
  const tabs: readonly (readonly [Tab, string, boolean])[] = [
    ['sheets', words.teach.ours, true],
    ['ask', words.teach.ask, true],
    ['out', words.teach.handOut, false],
    ['marks', words.teach.mark, false],
  ];
  const { progress, cancel } = seam;
  const box = { title: words.teach.exercises, className: 'wide-box teach-box', closed: cancel };
  openDialogBox(box, (close) => {
    const share = progress.value;
    const taught = seam.taught.value;
    const shown = taught || tab.value === 'ask' ? tab.value : 'sheets';
    return html`${share === null ? '' : waiting(words.teach.working, share, cancel)}
      <div class="box-body stack" ?inert=${share !== null}>
        <div class="verbs" role="group" aria-label=${words.teach.exercises}>
          ${tabs.map(
            ([id, name, always]) =>
              html`<button
                class="button"
                aria-pressed=${shown === id}
                ?disabled=${!always && !taught}
                title=${always || taught ? '' : words.teach.onlyOnExercise}
                @click=${() => {
                  say(undefined);
                  tab.value = id;
                }}
              >
                ${name}
              </button>`,
          )}
        </div>
        <p class="remark" role="alert" ?hidden=${refused.value === ''}>${refused.value}</p>
        ${
          shown === 'sheets'
            ? offered(seam.offered, (id) => {
                const reason = seam.add(id);
                say(reason);
                if (reason === undefined) close();
              })
            : shown === 'ask'
              ? authorForm(seam, say)
              : taught &&
                (shown === 'out' ? handingOut(seam, taught, say) : marks(seam, taught, say))
        }
      </div>`;
  });
}

const offered = (all: readonly Offered[], add: (id: string) => void) =>
  [1, 2, 3].map(
    (level) =>
      html`<section>
        <h3>${words.teach.level(level)}</h3>
        <ul class="offered">
          ${all
            .filter((one) => one.level === level)
            .map(
              ({ id, title, purpose }) =>
                html`<li>
                  <button class="card" @click=${() => add(id)}>
                    <b>${title}</b><span>${purpose}</span>
                  </button>
                </li>`,
            )}
        </ul>
      </section>`,
  );

function handingOut(seam: TeacherSeam, taught: Taught, say: (reason?: string) => void) {
  const out = (event: Event) => {
    const said = fieldsOf(event);
    void seam.handOut(said.get('names') ?? '', said.get('seed') ?? '').then(say);
  };
  return html`<form @submit=${out}>
      <h3>${taught.title}</h3>
      <p>${words.teach.asks(taught.questions, taught.points)}</p>
      <label class="field"
        ><span>${words.teach.classList}</span>
        <textarea class="input" name="names" rows="6" required></textarea>
      </label>
      <label class="field"
        ><span>${words.teach.seed}</span>
        <input class="input" name="seed" required autocomplete="off" maxlength="60" />
      </label>
      <p class="faint">${words.teach.seedHelp}</p>
      <p class="faint">
        ${words.teach.secretDigests} ${words.teach.secretNone} ${words.teach.secretOurs}
      </p>
      <div class="row end"><button class="button lit">${words.teach.makeZip}</button></div>
    </form>
    ${taught.classes.map(
      ({ id, seed, count }) =>
        html`<div class="verbs">
          <span>${words.teach.classOf(seed, count)}</span>
          <button class="button" @click=${() => say(seam.saveKey(id))}>
            ${words.teach.saveKey}
          </button>
          ${(['handouts', 'key'] as const).map(
            (what) =>
              html`<button class="button" @click=${() => void seam.print(what, id).then(say)}>
                ${words.teach.prints[what]}
              </button>`,
          )}
        </div>`,
    )}`;
}

function marks(seam: TeacherSeam, taught: Taught, say: (reason?: string) => void) {
  const [first] = taught.classes;
  if (!first) return html`<p class="none">${words.teach.notHandedOut}</p>`;
  const chosen = (from: EventTarget | null): string =>
    (from as HTMLElement).closest('section')?.querySelector('select')?.value ?? first.id;
  const take = async (from: EventTarget | null, files: ReturnType<TeacherSeam['pick']>) => {
    const klass = chosen(from);
    const all = await files;
    if (all.length > 0) say(await seam.mark(klass, all));
  };
  const button = (name: string, folder: boolean) =>
    html`<button
      class="button"
      @click=${(event: Event) => void take(event.currentTarget, seam.pick(folder))}
    >
      ${name}
    </button>`;
  const { value: marked } = seam.marked;
  return html`<section
    class="drop"
    @dragover=${(event: DragEvent) => event.preventDefault()}
    @drop=${(event: DragEvent) => {
      event.preventDefault();
      event.stopPropagation();
      void take(event.currentTarget, droppedFiles(event));
    }}
  >
    <label class="field"
      ><span>${words.teach.class}</span>
      <select class="input">
        ${taught.classes.map(
          ({ id, seed, count }) =>
            html`<option value=${id}>${words.teach.classOf(seed, count)}</option>`,
        )}
      </select>
    </label>
    <p>${words.teach.dropHere}</p>
    <div class="verbs">
      ${button(words.teach.pickFiles, false)} ${button(words.teach.pickFolder, true)}
    </div>
    ${
      marked
        ? html`<div class="verbs">
              ${(['csv', 'xlsx'] as const).map(
                (form) =>
                  html`<button class="button" @click=${() => void seam.save(form)}>
                    ${words.teach.saveMarks[form]}
                  </button>`,
              )}
              <button
                class="button"
                @click=${(event: Event) =>
                  void seam.print('feedback', chosen(event.currentTarget)).then(say)}
              >
                ${words.teach.prints.feedback}
              </button>
            </div>
            ${marksView(marked)}`
        : ''
    }
  </section>`;
}
