import { html, nothing } from 'lit-html';
import { writingSettings } from '../../book/settings.ts';
import type { KeptSpectrum } from '../../book/spectra.ts';
import type { ShelfItem } from '../../book/types.ts';
import { noteOf } from '../../files/spectra/read.ts';
import { spectrumOf } from '../../files/spectra/shelf.ts';
import type { Signal } from '../kit/signals.ts';
import { pairs } from '../kit/pairs.ts';
import type { Workbook } from '../workbook.ts';
import { spectrumFigures } from './drawn.ts';
import { factsOf, filterFacts } from './facts.ts';
import { words } from '../../words/words.ts';

/** What the chosen spectrum comes to, behind a filter of the book if one is chosen too. */
export function spectrumReport(
  items: readonly ShelfItem[],
  kept: readonly KeptSpectrum[],
  chosen: KeptSpectrum,
  filter: Signal<string>,
  workbook: Workbook,
) {
  const said = words.spectraList;
  const writing = writingSettings(workbook.settings.value);
  const named = ({ id }: KeptSpectrum) => {
    const item = items.find((one) => one.id === id);
    return item && spectrumOf(item);
  };
  const spectrum = named(chosen);
  if (!spectrum) return nothing;
  const { name } = chosen;
  const isFilter = spectrum.measures === 'transmission';
  const filters = isFilter ? [] : kept.filter(({ kind }) => kind === 'transmission');
  const before = filters.find(({ id }) => id === filter.value);
  const { facts, sentences } = isFilter
    ? { facts: filterFacts(name, spectrum, writing), sentences: [] }
    : factsOf(name, spectrum, writing, before && named(before));
  const notes = (spectrum.madeUp ?? []).map(noteOf);
  return html`<section class="report" aria-label=${said.report(name)}>
    <h3>${said.report(name)}</h3>
    ${filters.length > 0 ? behind(filters, before, filter) : nothing} ${pairs(facts, 'comes-to')}
    ${spectrumFigures(items, { spectrum: name, filter: before?.name ?? '' }, isFilter, workbook)}
    ${[...sentences, ...notes].map((sentence) => html`<p class="faint">${sentence}</p>`)}
  </section>`;
}

function behind(
  filters: readonly KeptSpectrum[],
  before: KeptSpectrum | undefined,
  filter: Signal<string>,
) {
  const said = words.spectraList;
  return html`<label class="field behind"
    ><span>${said.behind}</span
    ><select
      class="input"
      @change=${(event: Event) => (filter.value = (event.currentTarget as HTMLSelectElement).value)}
    >
      <option value="" ?selected=${!before}>${said.noFilter}</option>
      ${filters.map(
        ({ id, name }) => html`<option value=${id} ?selected=${id === before?.id}>${name}</option>`,
      )}
    </select></label
  >`;
}
