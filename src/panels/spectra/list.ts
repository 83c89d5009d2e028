import { html } from 'lit-html';
import { writingSettings } from '../../book/settings.ts';
import type { KeptSpectrum } from '../../book/spectra.ts';
import type { ShelfItem } from '../../book/types.ts';
import { spectrumOf } from '../../files/spectra/shelf.ts';
import { stepOf } from '../../../functions/spectrum/spectrum.ts';
import { writeNumber } from '../../../functions/quantities/writing/number.ts';
import type { Signal } from '../kit/signals.ts';
import { nameField, removeButton } from '../shelf/cells.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { lineOf } from './facts.ts';
import { words } from '../../words/words.ts';

const { kelvin, duv, ra, ssi, tlci } = words.spectraList;
const figureCaptions = [kelvin, duv, ra, ssi, tlci];

/** One of them is shown below: its row says so. */
export function spectrumList(
  items: readonly ShelfItem[],
  kept: readonly KeptSpectrum[],
  chosen: KeptSpectrum | undefined,
  shown: Signal<string>,
  workbook: Workbook,
) {
  const said = words.spectraList;
  return html`<div class="scroll">
    <table class="names shelf-list">
      <thead>
        <tr>
          <th scope="col"><span class="unseen">${said.shown}</span></th>
          <th scope="col">${said.name}</th>
          ${figureCaptions.map((head) => html`<th scope="col" class="figure">${head}</th>`)}
          <th scope="col"><span class="unseen">${said.remove}</span></th>
        </tr>
      </thead>
      <tbody>
        ${kept.map((one) => {
          const item = items.find(({ id }) => id === one.id);
          return row(one, item, one === chosen, shown, workbook);
        })}
      </tbody>
    </table>
  </div>`;
}

function row(
  { id, name, file }: KeptSpectrum,
  item: ShelfItem | undefined,
  isShown: boolean,
  shown: Signal<string>,
  workbook: Workbook,
) {
  const said = words.spectraList;
  const writing = writingSettings(workbook.settings.value);
  const spectrum = item && spectrumOf(item);
  const line = spectrum && lineOf(name, spectrum, writing);
  const number = (value: number) => writeNumber(Math.round(value * 100) / 100, writing);
  const ends = spectrum && [spectrum.nanometres[0], spectrum.nanometres.at(-1), stepOf(spectrum)];
  const [from = '', to = '', step = ''] = (ends ?? []).map((nm) => number(nm ?? Number.NaN));
  return html`<tr class=${isShown ? 'shown' : ''}>
    <td>
      <input
        type="radio"
        name="shown-spectrum"
        aria-label=${said.showOne(name)}
        .checked=${isShown}
        @change=${() => (shown.value = id)}
      />
    </td>
    <td>
      ${nameField(name, said.nameOf(name), (wanted) =>
        workbook.run(verbs.renameSpectrum, { spectrum: id, name: wanted }),
      )}
      <small>${[file, ends && said.every(from, to, step)].filter(Boolean).join(' · ')}</small>
    </td>
    ${
      line
        ? line.map(
            (figure, index) =>
              html`<td class="figure" data-caption=${figureCaptions[index] ?? ''}>${figure}</td>`,
          )
        : html`<td colspan="5">${spectrum ? said.filter : said.unreadable}</td>`
    }
    <td>
      ${removeButton(said.removeOne(name), () =>
        workbook.run(verbs.removeSpectrum, { spectrum: id }),
      )}
    </td>
  </tr>`;
}
