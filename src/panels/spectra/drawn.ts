import { html } from 'lit-html';
import type { Fixtures } from '../../../functions/fixture/fixture.ts';
import { writingSettings } from '../../book/settings.ts';
import type { ShelfItem } from '../../book/types.ts';
import { rendering } from '../../figures/kinds/rendering.ts';
import { spectrum } from '../../figures/kinds/spectrum.ts';
import { pageTheme } from '../../figures/kit/theme.ts';
import { spectraIn } from '../../files/spectra/shelf.ts';
import { furtherSentences } from '../figures/sentences.ts';
import { svgOf } from '../figures/svg.ts';
import { written } from '../kit/written.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** The box at its widest, what stands beside the drawings in it, and from where two stand in a row. */
const [widest, beside, two] = [896, 64, 720];

/** None of these figures looks at a fixture. */
const noFixtures: Fixtures = { names: [], named: () => undefined };

/** As figures of a sheet would be, each with the way onto the sheet in view. */
export function spectrumFigures(
  items: readonly ShelfItem[],
  options: { readonly spectrum: string; readonly filter: string },
  isFilter: boolean,
  workbook: Workbook,
) {
  const given = {
    ...{ writing: writingSettings(workbook.settings.value), tolerance: 0 },
    ...{ fixtures: noFixtures, inputs: {}, options },
    spectra: spectraIn({ shelf: () => ({ version: 1, items }) }),
  };
  const whole = Math.max(280, Math.min(innerWidth - 24, widest) - beside);
  const kinds = isFilter ? [spectrum] : [spectrum, rendering];
  const width = whole > two && kinds.length > 1 ? (whole - 24) / 2 : whole;
  return html`<div class="drawn">
    ${kinds.map((kind) => {
      const made = kind.make(given);
      const [lead = '', ...rest] = 'reason' in made ? [made.reason] : made.sentences;
      return html`<figure class="figure">
        ${'reason' in made ? '' : svgOf(made.draw(pageTheme, { width, letters: 13 }), lead)}
        <figcaption>
          <div>
            <p>${written(lead)}</p>
            ${furtherSentences(rest)}
          </div>
        </figcaption>
        ${'reason' in made ? '' : toSheet(kind, options, workbook)}
      </figure>`;
    })}
  </div>`;
}

function toSheet(
  { kind, name }: { readonly kind: string; readonly name: string },
  options: { readonly spectrum: string; readonly filter: string },
  workbook: Workbook,
) {
  const said = words.spectraList;
  const title = said.titled(name, options.spectrum);
  if (workbook.figures.shown.value.some((one) => one.kind === kind && one.title === title))
    return html`<p class="faint">${said.onSheet}</p>`;
  return html`<button
    class="button"
    aria-label=${said.figureTo(name)}
    @click=${() => workbook.run(verbs.addFigure, { kind, title, cells: {}, values: {}, options })}
  >
    ${said.toSheet}
  </button>`;
}
