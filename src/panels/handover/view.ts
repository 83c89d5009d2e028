import { html, nothing } from 'lit-html';
import { words } from '../../words/words.ts';
import { pairs } from '../kit/pairs.ts';
import { shape } from '../kit/shape.ts';
import { table } from '../kit/table.ts';
import { written } from '../kit/written.ts';
import type { HandOver, HandOverPoint, Listed, Pair } from './handover.ts';

/** The page itself, for the screen and for paper. */
export function handOverPage(told: HandOver, date: string) {
  const said = words.print;
  const { book, place, purpose, camera, ratios, points, rig, set, colour, cautions } = told;
  return html`<article class="handover">
    <header>
      <p>${book} · ${said.handover}</p>
      <h2>${place}</h2>
      <p>${date} · ${purpose}</p>
    </header>
    ${missing(told)} ${part(said.camera, settings(camera))}
    ${part(said.points, points.length > 0 ? pointTable(points) : nothing)}
    ${part(said.ratios, pairs(ratios))} ${part(said.rig, listed(rig))}
    ${part(said.set.title, listed(set))} ${part(said.colour, listed(colour))}
    ${part(
      said.cautions,
      html`<ul>
        ${[...said.usual, ...cautions].map((line) => html`<li>${line}</li>`)}
      </ul>`,
    )}
    <footer>
      ${[said.handedOver, said.takenOver].map(
        (who) => html`<p><b>${who}</b><i>${said.signed}</i></p>`,
      )}
    </footer>
    <p class="as-of">${said.fromBook}</p>
  </article>`;
}

/** Longer than this a text is no setting but a sentence, with a line of its own. */
const longest = 40;

function settings(camera: readonly Pair[]) {
  if (camera.length === 0) return nothing;
  const sentences = camera.filter(({ text }) => text.length > longest);
  return html`${pairs(camera.filter(({ text }) => text.length <= longest))}
  ${sentences.map(({ label, text }) => html`<p><b>${label}:</b> ${written(text)}</p>`)}`;
}

const missing = ({ missing: lost }: HandOver) =>
  lost.length > 0
    ? html`<p class="lost"><b>${words.print.missing}:</b> ${lost.join('; ')}.</p>`
    : html`<p class="lost">${words.print.complete}</p>`;

export const part = (title: string, content: unknown) =>
  content === nothing
    ? nothing
    : html`<section>
        <h3>${title}</h3>
        ${content}
      </section>`;

/** Columns in which no row says anything are left out. */
export function listed({ captions, rows }: Listed) {
  if (rows.length === 0) return nothing;
  const used = captions.map((_, column) => column === 0 || rows.some((row) => row[column] !== ''));
  const kept = <T>(all: readonly T[]) => all.filter((_, column) => used[column]);
  return table(
    kept(captions),
    rows.map((row) => kept(row).map((text) => written(text))),
  );
}

/** Columns in which no point says anything are left out. */
function pointTable(points: readonly HandOverPoint[]) {
  const said = words.print;
  const columns: readonly (readonly [string, (point: HandOverPoint) => string])[] = [
    [said.wanted, ({ wanted }) => wanted],
    [said.reading, ({ reading }) => reading],
    [said.meter, ({ meter }) => meter],
    [said.light, ({ light }) => light],
    [said.from, ({ from }) => from],
  ];
  const used = columns.filter(([, of]) => points.some((point) => of(point) !== ''));
  const noted = points.some(({ note }) => note !== '');
  return table(
    [said.point, ...used.map(([caption]) => caption), said.verdict, ...(noted ? [said.note] : [])],
    points.map((point) => [
      point.label,
      ...used.map(([, of]) => written(of(point))),
      point.verdicts.map(
        (verdict) =>
          html`<span class="verdict">${shape(verdict.shape)} ${written(verdict.words)}</span>`,
      ),
      ...(noted ? [point.note] : []),
    ]),
  );
}
