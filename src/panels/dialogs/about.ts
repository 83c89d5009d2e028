import { html } from 'lit-html';
import { mark } from '../bar/mark.ts';
import { openDialogBox } from '../kit/dialog.ts';

export function about(): void {
  openDialogBox(
    { title: 'About Halfstop', className: 'about-box' },
    () => html`
      <div class="box-body prose">
        <p class="sign">${mark()}</p>
        <p>
          A lighting workbook: plan, meter and repeat the light on a set, in stops. Books are kept
          on this device and in the files you save. Nothing is sent anywhere.
        </p>
        <p>
          Halfstop is free software: you may use, study, share and change it under the GNU General
          Public License, version 3 or later. It comes without warranty. Its function library may be
          used on its own under the MIT licence.
        </p>
        <p>
          <a class="link" href="./LICENSE.txt" target="_blank" rel="noopener"
            >Licence of Halfstop</a
          >
          ·
          <a class="link" href="./THIRD-PARTY.txt" target="_blank" rel="noopener"
            >Libraries and typefaces, with their licences</a
          >
        </p>
        <p class="faint">
          A number here is as good as the reading it came from. Electrical figures help to plan and
          do not replace a competent person.
        </p>
      </div>
    `,
  );
}
