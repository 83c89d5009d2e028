import { html, nothing } from 'lit-html';
import type { NewSpectrum } from '../../book/make/spectra.ts';
import { spectraOf } from '../../book/spectra.ts';
import { sampleSpectra } from '../../files/spectra/samples.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal } from '../kit/signals.ts';
import { bringing } from '../shelf/bringing.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { spectrumList } from './list.ts';
import { spectrumReport } from './report.ts';
import { takeIn } from './takeIn.ts';
import { words } from '../../words/words.ts';

/** The spectra of the book: what each comes to; to add from files or from the clipboard. */
export function spectraDialog(workbook: Workbook, files: readonly File[] = []): void {
  const said = words.spectraList;
  /** Which is shown, and behind which filter: the first until one is chosen. */
  const [shown, filter] = [signal(''), signal('')];
  const way = bringing<NewSpectrum>({
    read: takeIn,
    keep(spectra) {
      const before = new Set(workbook.spectra.value.map(({ id }) => id));
      const kept = workbook.run(verbs.addSpectra, { spectra });
      const fresh = workbook.spectra.value.filter(({ id }) => !before.has(id));
      const light = fresh.find(({ kind }) => kind !== 'transmission') ?? fresh[0];
      shown.value = light?.id ?? shown.value;
      return kept;
    },
    said: said.taking,
    accept: '.csv,.tsv,.txt,.xml,.spdx,.cgats,.sp,.ti3,text/plain,text/csv,text/xml',
  });
  const samples = () =>
    way.bring(
      sampleSpectra.map(({ name, file, text }) => new File([text], `${name}${ending(file)}`)),
    );
  openDialogBox(
    { title: said.title, className: 'wide-box exchange spectra', closed: way.hear() },
    () => {
      const items = workbook.spectra.value;
      const kept = spectraOf({ shelf: () => ({ version: 1, items }) });
      const chosen = kept.find(({ id }) => id === shown.value) ?? kept[0];
      return html`<div
        class="box-body stack"
        @dragover=${(event: DragEvent) => event.preventDefault()}
        @drop=${way.drop}
      >
        ${kept.length > 0 ? spectrumList(items, kept, chosen, shown, workbook) : empty}
        ${chosen ? spectrumReport(items, kept, chosen, filter, workbook) : nothing}
        ${way.view(
          html`<button class="button" @click=${() => void samples()}>${said.samples}</button>`,
        )}
        <p class="faint">${said.caution}</p>
      </div>`;
    },
  );
  void way.bring(files);
}

const ending = (file: string): string => /\.[^.]*$/.exec(file)?.[0] ?? '';

const empty = html`<p class="faint">
  ${words.spectraList.noneBefore} <i>SPECTRUMCRI("Key")</i> ${words.spectraList.noneAfter}
</p>`;
