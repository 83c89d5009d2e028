import { html, nothing } from 'lit-html';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { Photo } from '../../book/types.ts';
import type { Record } from '../../book/records.ts';
import { pairs } from '../../panels/kit/pairs.ts';
import { photoRow } from '../../panels/kit/photo.ts';
import { written } from '../../panels/kit/written.ts';
import { say } from '../../panels/views/show.ts';
import type { Workbook } from '../../panels/workbook.ts';
import { words } from '../../words/words.ts';

/** A record as it was kept, to be read. */
export function recordView(record: Record, workbook: Workbook, writing: WritingSettings) {
  const said = words.repeat;
  const { name, date, time, place, by, meter, camera, ratios, points, spots, colours, rig } =
    record;
  const amount = (value: number | undefined, quantity: QuantityName) =>
    value === undefined ? '' : say(value, quantity, writing);
  const read = (one: { readonly reading?: { readonly said: string } }) => one.reading?.said ?? '–';
  return html`<article class="record">
    <h3>${name}</h3>
    <p class="faint">
      ${[said.dateAndPlace(date, time, place), by, meter?.name].filter(Boolean).join(' · ')}
    </p>
    ${record.note ? html`<p>${record.note}</p>` : nothing}
    ${titled(said.camera, pairs(camera.settings))} ${titled(said.ratios, pairs(ratios))}
    ${table(
      said.points,
      [
        said.point,
        said.reading,
        said.fromKey,
        said.light,
        said.lampAlone,
        said.stood,
        said.output,
        said.at,
        said.meter,
      ],
      points.map((point) => [
        point.name,
        read(point),
        amount(point.fromKey, 'stops'),
        amount(rounded(point.lux), 'illuminance'),
        amount(rounded(point.own), 'illuminance'),
        amount(rounded(point.distance), 'length'),
        amount(point.output, 'share'),
        point.time ?? '',
        point.meter ?? '',
      ]),
    )}
    ${table(
      said.spots,
      [said.point, said.reading, said.fromGrey],
      spots.map((spot) => [spot.name, read(spot), amount(spot.fromGrey, 'stops')]),
    )}
    ${table(
      said.colours,
      [said.source, said.reading, said.tint],
      colours.map(({ name: source, kelvin, duv }) => [
        source,
        amount(kelvin, 'colourTemperature'),
        amount(duv, 'duv'),
      ]),
    )}
    ${rigTable(rig)} ${notes([...points, ...spots, ...colours], workbook)}
  </article>`;
}

/** Three figures are what a meter and a tape have. */
const rounded = (value: number | undefined) =>
  value === undefined ? undefined : Number(value.toPrecision(3));

const titled = (title: string, content: unknown) =>
  content === nothing
    ? nothing
    : html`<h4>${title}</h4>
        ${content}`;

function table(title: string, heads: readonly string[], rows: readonly (readonly string[])[]) {
  if (rows.length === 0) return nothing;
  const used = heads.map((_, at) => rows.some((row) => row[at] !== ''));
  const kept = <Item>(items: readonly Item[]) => items.filter((_, at) => used[at]);
  return html`<h4>${title}</h4>
    <div class="scroll">
      <table class="names">
        <thead>
          <tr>
            ${kept(heads).map((head) => html`<th scope="col">${head}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            (row) =>
              html`<tr>
                ${kept(row).map((text) => html`<td>${written(text)}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

/** Each light with whatever its sheet said of it. */
const rigTable = (rig: Record['rig']) =>
  rig.length === 0
    ? nothing
    : html`<h4>${words.repeat.rig}</h4>
        <ul class="rig">
          ${rig.map(
            ({ name, says }) =>
              html`<li>
                <b>${name}</b>
                ${says
                  .filter(({ text }) => text !== name)
                  .map(
                    ({ caption, text }) => html`<span><i>${caption}</i> ${written(text)}</span>`,
                  )}
              </li>`,
          )}
        </ul>`;

interface Noted {
  readonly name: string;
  readonly note?: string;
  readonly photos?: readonly Photo[];
}

function notes(all: readonly Noted[], workbook: Workbook) {
  const told = all.filter(({ note, photos }) => note || photos);
  if (told.length === 0) return nothing;
  return html`<h4>${words.repeat.notes}</h4>
    <ul class="notes">
      ${told.map(
        ({ name, note, photos = [] }) =>
          html`<li><b>${name}</b> ${note ?? ''} ${photoRow(workbook, photos)}</li>`,
      )}
    </ul>`;
}
