import { html, nothing } from 'lit-html';
import { signal, type ReadonlySignal } from '../kit/signals.ts';

/** As much of a browser’s file as is needed here. */
export interface Incoming {
  readonly name: string;
  readonly size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

/** What came of reading several files. */
export interface TakenIn<Thing> {
  readonly things: readonly Thing[];
  /** A sentence a file: why it was not taken, or what is to be known of one that was. */
  readonly sentences: readonly string[];
}

/** How a shelf takes in files. */
export interface Taking<Thing> {
  read(files: readonly Incoming[], progress: (done: number) => void): Promise<TakenIn<Thing>>;
  /** Puts them on the shelf in one gesture; false if that was refused. */
  keep(things: readonly Thing[]): boolean;
  readonly said: {
    readonly fromFiles: string;
    readonly fromFilesHelp: string;
    readonly choose: string;
    /** A file name for text that was pasted. */
    readonly pasted: string;
    reading(done: number, count: number): string;
    added(count: number): string;
  };
  /** File name endings and types, for the picker. */
  readonly accept: string;
}

interface Standing {
  /** "Reading 3 of 12"; empty when nothing is read. */
  readonly progress: string;
  readonly sentences: readonly string[];
}

/** The way of files onto a shelf: chosen, dropped, or pasted as the text of one. */
export interface Bringing {
  readonly state: ReadonlySignal<Standing>;
  bring(files: readonly File[]): Promise<void>;
  drop(event: DragEvent): void;
  /** Hears what is pasted while the dialog is open; gives the end of that. */
  hear(): () => void;
  /** Its part of the dialog, with what else can be done there. */
  view(more?: unknown): unknown;
}

export function bringing<Thing>({ read, keep, said, accept }: Taking<Thing>): Bringing {
  const state = signal<Standing>({ progress: '', sentences: [] });
  const bring = async (files: readonly File[]) => {
    if (files.length === 0) return;
    state.value = { progress: '', sentences: [] };
    const { things, sentences } = await read(files, (done) => {
      state.value = { ...state.value, progress: said.reading(done + 1, files.length) };
    });
    const kept = things.length > 0 && keep(things);
    state.value = { progress: said.added(kept ? things.length : 0), sentences };
  };
  /** In a field a paste is a paste; elsewhere it is the text of a file, or files. */
  const pasted = (event: ClipboardEvent) => {
    const { clipboardData: data, target } = event;
    if (!data || target instanceof HTMLInputElement) return;
    event.preventDefault();
    event.stopPropagation();
    const text = data.getData('text/plain');
    const files = [...data.files];
    if (files.length === 0 && text !== '') files.push(new File([text], said.pasted));
    void bring(files);
  };
  return {
    state,
    bring,
    drop(event) {
      event.preventDefault();
      // The window opens what is dropped beside the dialog.
      event.stopPropagation();
      delete document.documentElement.dataset['dropping'];
      void bring([...(event.dataTransfer?.files ?? [])]);
    },
    hear() {
      document.addEventListener('paste', pasted, { capture: true });
      return () => document.removeEventListener('paste', pasted, { capture: true });
    },
    view(more = nothing) {
      const { progress, sentences } = state.value;
      return html`<fieldset class="choices">
        <legend>${said.fromFiles}</legend>
        <p>${said.fromFilesHelp}</p>
        <div class="row">
          <label class="button"
            >${said.choose}<input
              type="file"
              class="unseen"
              multiple
              accept=${accept}
              @change=${(event: Event) => {
                const input = event.currentTarget as HTMLInputElement;
                void bring([...(input.files ?? [])]).then(() => (input.value = ''));
              }} /></label
          >${more}
        </div>
        <p role="status">${progress}</p>
        ${
          sentences.length > 0
            ? html`<ul class="sentences">
                ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
              </ul>`
            : nothing
        }
      </fieldset>`;
    },
  };
}
