import { saveAs } from 'file-saver';
import type { Outcome } from '../commands/command.ts';
import type * as making from '../panels/figures/make.ts';
import type { FigureView, Figures } from '../panels/figures/seam.ts';
import { computed, signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { Look } from '../panels/views/look.ts';
import type { Desk } from './desk.ts';
import { saveText } from './file-dialog.ts';
import { words } from '../words/words.ts';

type Making = typeof making;

export interface FigureFiles {
  /** Fetches what draws, once there is a book. */
  prepare(): void;
  save(id: string, as: 'svg' | 'png'): Promise<Outcome>;
}

const none: FigureView[] = [];

/** The figures of the book on the desk: seen, asked about, saved as files. */
export function createFigures(
  desk: ReadonlySignal<Desk | null>,
  lookAt: (desk: Desk) => Look,
): Figures & FigureFiles {
  const loaded = signal<Making | null>(null);
  const withDesk = <T>(make: (now: Desk, what: Making) => T): T | undefined =>
    desk.value && loaded.value ? make(desk.value, loaded.value) : undefined;
  const shown = computed(
    () =>
      withDesk((now, { figuresView }) => {
        void now.settled.value;
        return figuresView(lookAt(now), now.state.value.sheet);
      }) ?? none,
  );
  return {
    shown,
    kinds: computed(() => loaded.value?.figureKinds ?? []),
    form: (kind, figure) =>
      withDesk((now, { formOf, newForm }) => {
        const { sheet, selection } = now.session.state;
        const there = figure === undefined ? undefined : formOf(lookAt(now), figure);
        return there ?? newForm(lookAt(now), kind, sheet, selection);
      }) ?? { kind, title: '', fields: {}, options: {} },
    planned: (form) =>
      withDesk((now, { plannedForm }) => plannedForm(lookAt(now), form)) ?? {
        ...{ kind: form.kind, title: form.title, options: form.options },
        ...{ cells: {}, values: {} },
      },
    placed: (figure, hand, to) =>
      withDesk((now, { placedHand }) => placedHand(lookAt(now), figure, hand, to)) ?? {
        name: hand.name,
        entries: [],
      },
    prepare() {
      // Who asks for a figure before it has come is told so by the dialog.
      if (!loaded.value)
        void import('../panels/figures/make.ts').then(
          (what) => (loaded.value = what),
          () => undefined,
        );
    },
    async save(id, as) {
      const figure = shown.value.find((one) => one.id === id);
      const { value: what } = loaded;
      if (!figure || !what || 'reason' in figure.made)
        return { ok: false, reason: words.app.nothingDrawn };
      const { title, made } = figure;
      const drawing = made.draw(what.fileTheme, fileSize);
      const text = what.svgFile(drawing, title, made.sentences);
      if (as === 'svg') saveText(title, 'svg', 'image/svg+xml', text);
      else saveAs(await pictureOf(text), `${title}.png`);
      return { ok: true, say: words.app.savedFile(title) };
    },
  };
}

/** Wide enough for a page of a report. */
const fileSize = { width: 760, letters: 13 };
/** Twice as fine as it is drawn, for print. */
const finer = 2;

/** The drawing as a picture, painted by the browser itself. */
async function pictureOf(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * finer;
    canvas.height = image.naturalHeight * finer;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => {
        if (blob) resolve(blob);
        else reject(new Error(words.app.notPainted));
      }, 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
