import { html, nothing } from 'lit-html';
import { pageTheme } from '../../figures/kit/theme.ts';
import { words } from '../../words/words.ts';
import { figuresView } from '../figures/gather.ts';
import { svgOf } from '../figures/svg.ts';
import { written } from '../kit/written.ts';
import type { Look } from '../views/look.ts';
import { cellsOf } from './cells.ts';
import { captions, optionsIn, rowOf } from './compared.ts';
import { cautionsOf, pairsAbove } from './gather.ts';
import { pairs } from '../kit/pairs.ts';
import { listed, part } from './view.ts';

/** As wide as the page leaves it, in letters of 8 points. */
const size = { width: 640, letters: 11 };

/** A comparison on one page, for whoever says yes to it. */
export function comparisonPage(look: Look, id: string, date: string) {
  const cells = cellsOf(look, id);
  const said = words.print;
  const { title = '', name = '', purpose = '' } = look.document.sheet(id)?.properties ?? {};
  const sentence = rowOf(cells, captions.sentence);
  const options = optionsIn(cells);
  return html`<article class="handover">
    <header>
      <p>${look.document.title} · ${said.comparison}</p>
      <h2>${title || name}</h2>
      <p>${date} · ${purpose}</p>
    </header>
    <p class="lost"><b>${sentence === undefined ? '' : written(cells.said(sentence, 1))}</b></p>
    ${part(said.compared, pairs(pairsAbove(look, cells, sentence ?? 0)))}
    ${part(said.options, options.rows.length > 0 ? listed(options) : nothing)}
    ${figuresView(look, id).map(({ title: heading, kindName, made }) =>
      'reason' in made
        ? nothing
        : part(
            heading,
            html`${svgOf(made.draw(pageTheme, size), `${kindName}: ${heading}`)}
            ${made.sentences.map((line) => html`<p>${written(line)}</p>`)}`,
          ),
    )}
    ${part(
      said.cautions,
      html`<ul>
        ${cautionsOf(cells).map((line) => html`<li>${line}</li>`)}
      </ul>`,
    )}
    <p class="as-of">${said.fromBook}</p>
  </article>`;
}
