import { html, nothing, render } from 'lit-html';
import { stopsInWords } from '../../../functions/stops/verdictWords.ts';
import { pageTheme } from '../../figures/kit/theme.ts';
import { agreementOf } from '../../check/agreement.ts';
import { judgingPlaces } from '../../check/points.ts';
import { words } from '../../words/words.ts';
import { figuresView } from '../figures/gather.ts';
import { svgOf } from '../figures/svg.ts';
import { shape } from '../kit/shape.ts';
import { written } from '../kit/written.ts';
import { rolesOn } from '../views/foot-view.ts';
import type { Look } from '../views/look.ts';
import { pointsOf } from '../views/points.ts';
import type { Point } from '../shown.ts';
import { sheetsToHandOver } from './gather.ts';
import { pageOf } from './page.ts';

export interface EndNote {
  readonly address: string;
  readonly text: string;
}

/** What is said under the cells of a sheet. */
interface Under {
  readonly ends: readonly EndNote[];
  /** First and last of rows that are not printed, counted from 0. */
  readonly leftOut: readonly (readonly [from: number, to: number])[];
}

/** Letters of 8 points, whatever the width. */
const letters = 11;

const placesOn = (look: Look, id: string) => {
  const sheet = look.document.sheet(id);
  return sheet ? judgingPlaces(sheet) : { said: [], aimed: [], held: [] };
};

const judgedOn = (look: Look, id: string): readonly Point[] => pointsOf(look, placesOn(look, id));

/** What stands over the cells of a printed sheet. */
export function layHead(host: HTMLElement, look: Look, id: string): void {
  const { document } = look;
  const { title, name, purpose, tolerance } = document.sheet(id)?.properties ?? {};
  const places = placesOn(look, id);
  const points = pointsOf(look, places);
  const allowed = stopsInWords(tolerance ?? document.settings.tolerance);
  const held = html`, ${words.print.tolerance} ${written(allowed)}`;
  render(
    html`<h1>${title || name}</h1>
      <p>${purpose}</p>
      ${
        points.length > 0
          ? html`<p class="sum">
              <b>${agreementOf(points).words}</b>${places.held.length > 0 ? held : nothing}
              <span>${points.map((point) => shape(point.shape))}</span>
            </p>`
          : nothing
      }`,
    host,
  );
}

/** What stands under them: what the marks mean, notes by their numbers, then the figures. */
export function layFoot(
  host: HTMLElement,
  look: Look,
  id: string,
  { ends, leftOut }: Under,
  width: number,
): void {
  const said = words.print;
  const roles = rolesOn(look, id);
  const shapes = [...new Set(judgedOn(look, id).map((point) => point.shape))];
  render(
    html`<div class="under-table">
        ${
          roles.length + shapes.length > 0
            ? html`<ul class="marks">
                ${roles.map((role) => html`<li><span class="role ${role}"></span>${said.roles[role]}</li>`)}
                ${roles.length > 0 ? html`<li>${said.result}</li>` : nothing}
                ${shapes.map((one) => html`<li>${shape(one)} ${said.shapes[one]}</li>`)}
              </ul>`
            : nothing
        }
        ${
          leftOut.length > 0
            ? html`<p class="left-out">
                ${said.leftOut(leftOut.map(([from, to]) => said.rows(from + 1, to + 1)))}
              </p>`
            : nothing
        }
        ${
          ends.length > 0
            ? html`<section class="end-notes">
                <h3>${said.notes}</h3>
                <ol>
                  ${ends.map(({ address, text }) => html`<li><b>${address}</b> ${text}</li>`)}
                </ol>
              </section>`
            : nothing
        }
      </div>
      <div class="drawn">
        ${figuresView(look, id).map(({ title, kindName, made }) => {
          const lines = 'reason' in made ? [made.reason] : made.sentences;
          return html`<figure class="figure">
            <figcaption>
              <h3>${title}</h3>
              ${lines.map((line) => html`<p>${written(line)}</p>`)}
            </figcaption>
            ${
              'reason' in made
                ? nothing
                : svgOf(made.draw(pageTheme, { width, letters }), `${kindName}: ${title}`)
            }
          </figure>`;
        })}
      </div>`,
    host,
  );
}

/** The hand-over page of a sheet, or of the first that has points; false where there is none. */
export function layHandOver(host: HTMLElement, look: Look, id: string, date: string): boolean {
  const sheets = sheetsToHandOver(look);
  const chosen = sheets.find((sheet) => sheet.id === id) ?? sheets[0];
  const page = chosen && pageOf(look, chosen.id, date);
  if (page) render(page, host);
  return page !== undefined;
}
