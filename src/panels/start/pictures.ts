import { html, svg } from 'lit-html';

/**
 * Small drawings of what a book is for. Ink lines, the lamp's colour where there is light.
 * Colours come from classes: `ink`, `soft`, `lit`, `glow`.
 */
const drawings: Readonly<Record<string, unknown>> = {
  // From above: background, a face, key and fill, and what each throws.
  'key-fill-background': svg`
    <path class="glow" d="M38 96 84 46 104 60Z" />
    <path class="glow faint-glow" d="M166 98 108 64 118 50Z" />
    <path class="ink" d="M24 14h152" /><path class="soft" d="M24 18l6-4m14 4 6-4m14 4 6-4m14 4 6-4m14 4 6-4m14 4 6-4m14 4 6-4m14 4 6-4" />
    <circle class="ink paper" cx="100" cy="52" r="10" /><path class="ink" d="M96 61l4 6 4-6" />
    <rect class="lit" x="28" y="92" width="16" height="9" rx="2" transform="rotate(-48 36 97)" />
    <rect class="ink paper" x="156" y="93" width="22" height="7" rx="1" transform="rotate(35 167 97)" />
    <path class="soft" stroke-dasharray="2 4" d="M44 90 92 58M156 92l-48-34" />
    <path class="ink" d="M94 106h12l-3-8h-6z" />`,
  // A loft with its beams, a window gap and a bench in the light that falls through it.
  'harbour-hours': svg`
    <path class="glow" d="M128 34 148 30 92 104H36Z" />
    <path class="ink" d="M20 104V44L100 10l80 34v60Z" />
    <path class="soft" d="M20 44h160M60 27v17M100 10v34M140 27v17" />
    <path class="lit" d="M126 52h24v20h-24z" /><path class="paperline" d="M138 52v20M126 62h24" />
    <path class="ink" d="M44 92h44M50 92v12M82 92v12" />
    <path class="soft" d="M52 88c8-10 22-10 30 0" />
    <path class="ink" d="M108 104V84l10-5v25" />`,
  blank: svg`
    <path class="ink paper" d="M58 12h84v98H58z" />
    <path class="soft" d="M58 34h84M58 53h84M58 72h84M58 91h84M86 34v76M114 34v76" />
    <path class="ink" d="M66 23h34" /><path class="lit" d="M86 53h28v19H86z" />`,
  file: svg`
    <path class="ink paper" d="M66 12h48l22 22v76H66z" /><path class="ink" d="M114 12v22h22" />
    <path class="soft" d="M78 52h46M78 66h46M78 80h30" />
    <path class="litline" d="M100 118V96m-8 8 8-9 8 9" />`,
  // The ladder: stops below and above the key.
  kept: svg`
    <path class="ink" d="M24 76h152" /><path class="soft" d="M40 76v8M70 76v8M100 76v12M130 76v8M160 76v8" />
    <path class="ink" d="M70 76V50M100 76V34M148 76V58" />
    <circle class="lit" cx="70" cy="76" r="5" /><circle class="lit" cx="100" cy="76" r="5" /><circle class="ink paper" cx="148" cy="76" r="5" />`,
};

export const pictureOf = (name: string) =>
  html`<svg class="drawing" viewBox="0 0 200 122" aria-hidden="true">
    ${drawings[name] ?? drawings['kept']}
  </svg>`;
