import { html } from 'lit-html';
import { ListTree, PanelBottomOpen } from 'lucide-static';
import type { Role } from '../../book/types.ts';
import { icon } from '../kit/icon.ts';
import { written } from '../kit/written.ts';
import type { Screen } from '../screen.ts';
import type { Workbook } from '../workbook.ts';

const roles: Readonly<Record<Role, string>> = {
  reading: 'reading',
  choice: 'choice',
  given: 'given',
  answer: 'answer',
};

/** Under the page: what the selection amounts to, and what the marks at the cells mean. */
export function foot(workbook: Workbook, screen: Screen) {
  const { facts, hint, roles: used } = workbook.foot.value;
  return html`
    <button class="button open-contents" @click=${() => screen.toggle('contents')}>
      ${icon(ListTree)}<span>Contents</span>
    </button>
    <div class="amounts" role="status" aria-label="Selection">
      ${
        facts.length > 0
          ? facts.map(({ label, text }) => html`<span>${label} <b>${written(text)}</b></span>`)
          : html`<span class="hint">${hint}</span>`
      }
    </div>
    ${
      used.length > 0
        ? html`<ul class="legend" aria-label="Marks of cells">
            ${used.map(
              (role) =>
                html`<li><span class="role ${role}" aria-hidden="true"></span>${roles[role]}</li>`,
            )}
            <li>plain: result</li>
          </ul>`
        : ''
    }
    <button class="button open-slip" @click=${() => screen.toggle('slip')}>
      <span>Slip</span>${icon(PanelBottomOpen)}
    </button>
  `;
}
