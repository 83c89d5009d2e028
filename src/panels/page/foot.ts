import { html } from 'lit-html';
import { ListTree, PanelBottomOpen } from 'lucide-static';
import type { Role } from '../../book/types.ts';
import { icon } from '../kit/icon.ts';
import { written } from '../kit/written.ts';
import type { Screen } from '../screen.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

const roles: Readonly<Record<Role, string>> = {
  reading: words.page.reading,
  choice: words.page.choice,
  given: words.page.given,
  answer: words.page.answer,
};

/** Pressed, Tab and Enter stop at readings only. */
const readings = (workbook: Workbook, { readingsOnly }: Screen) =>
  html`<button
    class="stops"
    aria-pressed=${readingsOnly.value}
    aria-label=${words.page.readingsOnly}
    title=${words.page.readingsOnly}
    @click=${() => workbook.run(verbs.readingsOnly)}
  >
    ${readingsOnly.value ? words.page.tabStops : words.page.reading}
  </button>`;

/** Under the page: what the selection amounts to, and what the marks at the cells mean. */
export function foot(workbook: Workbook, screen: Screen) {
  const { facts, hint, roles: used } = workbook.foot.value;
  return html`
    <button class="button open-contents" @click=${() => screen.toggle('contents')}>
      ${icon(ListTree)}<span>${words.page.contents}</span>
    </button>
    <div class="amounts" role="status" aria-label=${words.page.selection}>
      ${
        facts.length > 0
          ? facts.map(({ label, text }) => html`<span>${label} <b>${written(text)}</b></span>`)
          : html`<span class="hint">${hint}</span>`
      }
    </div>
    ${
      used.length > 0
        ? html`<ul class="legend" aria-label=${words.page.marks}>
            ${used.map(
              (role) =>
                html`<li>
                  <span class="role ${role}" aria-hidden="true"></span>${
                    role === 'reading' ? readings(workbook, screen) : roles[role]
                  }
                </li>`,
            )}
            <li>${words.page.plain}</li>
          </ul>`
        : ''
    }
    <button class="button open-slip" @click=${() => screen.toggle('slip')}>
      <span>${words.page.slip}</span>${icon(PanelBottomOpen)}
    </button>
  `;
}
