import { html } from 'lit-html';
import { mark } from '../bar/mark.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { words } from '../../words/words.ts';

export function about(): void {
  openDialogBox(
    { title: words.about.title, className: 'about-box' },
    () => html`
      <div class="box-body prose">
        <p class="sign">${mark()}</p>
        <p>${words.about.what}</p>
        <p>${words.about.freedom}</p>
        <p>
          <a class="link" href="./LICENSE.txt" target="_blank" rel="noopener"
            >${words.about.licence}</a
          >
          ·
          <a class="link" href="./THIRD-PARTY.txt" target="_blank" rel="noopener"
            >${words.about.libraries}</a
          >
        </p>
        <p class="faint">${words.about.limits}</p>
      </div>
    `,
  );
}
