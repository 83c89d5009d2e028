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
  // A frame of tones seen through the circle of a spot meter, and the curve they fall on.
  'reflected-survey': svg`
    <path class="ink paper" d="M22 16h92v60H22z" /><path class="glow" d="M22 16h34v60H22z" />
    <path class="soft" d="M56 16v60M84 16v60M92 22l14 14m-14 2 14 14m-14 2 14 14" />
    <circle class="ink" cx="70" cy="44" r="17" /><circle class="lit" cx="70" cy="44" r="5" />
    <path class="ink" d="M126 102h54M126 102V22" /><path class="litline" d="M128 98c18-2 18-58 48-66" />
    <path class="soft" stroke-dasharray="2 4" d="M75 44H150M151 46v54" />
    <path class="ink" d="M22 96h92M30 96v-6M44 96v-6M58 96v-10M72 96v-6M86 96v-6M100 96v-10" />
    <circle class="ink paper" cx="86" cy="96" r="4" /><circle class="lit" cx="58" cy="96" r="4" />`,
  // Three cameras side by side on one subject's light; the frame of the first is lit.
  camera: svg`
    <path class="glow" d="M46 58 92 22H108L154 58 100 46Z" />
    <circle class="ink paper" cx="100" cy="20" r="9" /><path class="ink" d="M96 28l4 6 4-6" />
    <path class="lit" d="M28 74h32v22H28z" /><path class="ink paper" d="M84 74h32v22H84zM140 74h32v22h-32z" />
    <path class="ink" d="M28 74h32v22H28zM37 74l3-12h8l3 12M93 74l3-12h8l3 12M149 74l3-12h8l3 12" />
    <path class="soft" d="M34 106h20M34 113h14M90 106h20M90 113h14M146 106h20M146 113h14" />`,
  // A bulb at full and two dimmed ones; the curve of its colour falls with the light.
  'tungsten-dimming': svg`
    <circle class="glow" cx="48" cy="40" r="32" /><circle class="glow faint-glow" cx="106" cy="44" r="22" />
    <path class="lit" d="M40 54c-12-10-8-30 8-30s20 20 8 30v6H40z" />
    <path class="ink paper" d="M98 56c-12-10-8-30 8-30s20 20 8 30v6H98zM152 58c-12-10-8-30 8-30s20 20 8 30v6h-16z" />
    <path class="ink" d="M41 65h14M43 70h10M99 67h14M101 72h10M153 69h14M155 74h10" />
    <path class="soft" d="M103 62v-12l3 4 3-4v12M157 64v-12l3 4 3-4v12" />
    <path class="ink" d="M24 108h152" /><path class="litline" d="M32 84c40 4 90 8 136 20" />`,
  // The sun's way over a harbour wall, and the shadow of a post.
  sun: svg`
    <path class="soft" stroke-dasharray="2 4" d="M22 92C44 10 156 10 178 92" />
    <circle class="glow" cx="136" cy="38" r="22" /><circle class="lit" cx="136" cy="38" r="10" />
    <circle class="ink paper" cx="26" cy="80" r="5" /><circle class="ink paper" cx="174" cy="80" r="5" />
    <path class="ink" d="M12 92h176M84 92V64" /><path class="soft" d="M84 92 40 98" />
    <path class="soft" d="M20 104h24m10 0h30m12 0h22m14 0h36M36 112h28m16 0h34m20 0h24" />`,
  // A board with three circuits, one of them nearly full, and a lead that goes to a lamp.
  power: svg`
    <path class="ink paper" d="M26 18h64v84H26z" /><path class="soft" d="M26 42h64M26 72h64" />
    <path class="lit" d="M36 26h20v8H36zM36 53h44v8H36zM36 83h8v8h-8z" />
    <path class="ink" d="M36 26h44v8H36zM36 53h44v8H36zM36 83h44v8H36z" />
    <path class="ink" d="M90 57h18c26 0 8 42 34 42h14" /><circle class="ink paper" cx="108" cy="57" r="4" />
    <circle class="glow" cx="160" cy="76" r="22" /><path class="lit" d="M148 74l24-10v22l-24-6z" />
    <path class="ink" d="M156 84v26m-12 0h24" />`,
  // Options as dots: dearer to the right, brighter above; the line goes through the best ones.
  compare: svg`
    <path class="ink" d="M34 12v92h144" /><path class="glow" d="M34 44h144v18H34z" /><path class="soft" d="M34 53h144" />
    <path class="soft" stroke-dasharray="2 4" d="M58 82h32V40h52V24h36" />
    <circle class="lit" cx="58" cy="82" r="6" /><circle class="lit" cx="90" cy="40" r="6" /><circle class="lit" cx="142" cy="24" r="6" />
    <circle class="ink paper" cx="118" cy="60" r="6" /><circle class="ink paper" cx="160" cy="70" r="6" />`,
  // Lamps on a shelf, some of them taken, and the face they light.
  choosing: svg`
    <path class="glow" d="M74 40 150 66v16L74 52Z" /><path class="glow faint-glow" d="M74 88 150 78v8L74 98Z" />
    <path class="ink" d="M24 56h56M24 104h56" />
    <path class="lit" d="M56 38l16-6v20l-16-5z" /><path class="ink paper" d="M32 38l14-6v20l-14-5z" />
    <path class="ink paper" d="M32 86l14-6v20l-14-5z" /><path class="lit" d="M56 86l16-6v20l-16-5z" />
    <circle class="ink paper" cx="160" cy="76" r="13" /><path class="ink" d="M154 88l6 7 6-7" />
    <path class="litline" d="M150 26l8 8 16-18" />`,
  // Cases on their days: bars over a calendar.
  hire: svg`
    <path class="ink paper" d="M24 16h152v92H24z" /><path class="soft" d="M24 34h152M62 16v92M100 16v92M138 16v92" />
    <path class="lit" d="M28 42h68v12H28z" /><path class="ink paper" d="M66 62h106v12H66zM104 82h68v12h-68z" />
    <path class="ink" d="M28 42h68v12H28zM36 25h14M74 25h14M112 25h14M150 25h14" />`,
  // A lamp, its throw down a measured line, and the light that grows wider and weaker.
  'fixtures-and-distances': svg`
    <path class="glow" d="M40 56 176 22V90Z" />
    <path class="ink paper" d="M20 46h16l6 6v8l-6 6H20z" /><path class="ink" d="M28 66v10" />
    <path class="ink" d="M84 45v22M128 34v44M172 23v66" /><path class="lit" d="M80 50h8v12h-8z" />
    <path class="soft" d="M40 104h132M40 100v8M84 100v8M128 100v8M172 100v8" />`,
  // The room from above: two lamps, what they throw, lines of equal light, a mark.
  'set-plan': svg`
    <path class="ink" d="M22 12h156v98H22z" />
    <path class="glow" d="M40 94 84 40 112 62Z" /><path class="glow faint-glow" d="M164 90 96 60 110 44Z" />
    <path class="soft" d="M74 54c4-22 44-24 50-4s-14 34-32 30-20-14-18-26zM86 54c2-12 24-14 28-2s-8 18-18 16-11-8-10-14z" />
    <circle class="ink paper" cx="100" cy="54" r="6" />
    <rect class="lit" x="30" y="88" width="14" height="9" rx="2" transform="rotate(-48 37 92)" />
    <rect class="ink paper" x="156" y="85" width="16" height="7" rx="1" transform="rotate(32 164 88)" />`,
  // A screen in fields, light in the middle and falling off to the corners.
  backdrop: svg`
    <path class="glow" d="M36 14h128v74H36z" /><path class="lit" d="M68 32h64v37H68z" />
    <path class="soft" d="M36 32h128M36 51h128M36 69h128M68 14v74M100 14v74M132 14v74" />
    <path class="ink" d="M36 14h128v74H36zM28 8h144" />
    <path class="ink paper" d="M22 112l8-10 8 10zM162 112l8-10 8 10z" />`,
  // Marks along a move; each lies in the band where the light holds.
  marks: svg`
    <path class="glow" d="M26 20 180 40V88L26 60Z" />
    <path class="soft" stroke-dasharray="2 4" d="M40 92C70 60 120 72 166 46" />
    <path class="ink" d="M34 86l12 12M46 86 34 98M84 62l12 12M96 62 84 74M122 60l12 12M134 60l-12 12" />
    <path class="lit" d="M158 38h16v16h-16z" /><path class="ink" d="M160 40l12 12M172 40l-12 12" />
    <path class="soft" d="M76 104h28M76 100v8M104 100v8" />`,
  // A filter brings a lamp’s light to the white of the other, by the line that whites lie on.
  match: svg`
    <path class="glow" d="M34 34 84 18v44L34 48Z" /><path class="glow faint-glow" d="M88 18l62 12v22L88 62Z" />
    <path class="lit" d="M18 34l16-6v26l-16-6z" /><path class="ink" d="M24 49v12" />
    <path class="ink paper" d="M82 14h8v52h-8z" /><path class="soft" d="M82 24l8-6m-8 16 8-6m-8 16 8-6m-8 16 8-6m-8 16 8-6" />
    <circle class="ink paper" cx="164" cy="41" r="12" />
    <path class="ink" d="M24 108C60 76 110 74 178 92" />
    <circle class="lit" cx="54" cy="88" r="5" /><circle class="ink paper" cx="136" cy="81" r="5" />
    <path class="litline" d="M66 92c18 8 36 8 54 0m-9-2 10 1-4 9" />`,
  // A window with the sun through it, its patch on the floor, a compass and a tape.
  recce: svg`
    <path class="glow" d="M54 24h34l58 80H92Z" />
    <path class="ink" d="M20 104h160M36 104V14" /><path class="ink paper" d="M54 24h34v44H54z" />
    <path class="soft" d="M71 24v44M54 46h34" /><circle class="lit" cx="62" cy="33" r="5" />
    <circle class="ink paper" cx="150" cy="34" r="18" /><path class="litline" d="M150 34l9-11" />
    <path class="soft" d="M150 16v5M150 47v5M132 34h5M163 34h5" />
    <path class="ink" d="M54 80h34M54 76v8M88 76v8" />`,
  // Three set-ups on a line of hours; two of them share their lights.
  'running-order': svg`
    <path class="ink" d="M24 100h152M24 96v8M74 96v8M124 96v8M176 96v8" />
    <path class="ink paper" d="M28 22h42v56H28zM78 22h42v56H78zM128 22h44v56h-44z" />
    <circle class="lit" cx="40" cy="36" r="5" /><circle class="lit" cx="58" cy="60" r="5" />
    <circle class="lit" cx="90" cy="36" r="5" /><circle class="lit" cx="108" cy="60" r="5" />
    <circle class="ink paper" cx="142" cy="58" r="5" /><circle class="lit" cx="160" cy="38" r="5" />
    <path class="litline" d="M50 88h48" /><path class="soft" stroke-dasharray="2 4" d="M100 88h48" />`,
  // A book with a tab for each kind of thing, and a lamp on its page.
  'address-book': svg`
    <path class="ink paper" d="M44 14h104v94H44z" /><path class="ink" d="M58 14v94" />
    <path class="lit" d="M148 24h14v16h-14z" /><path class="ink paper" d="M148 46h14v16h-14zM148 68h14v16h-14z" />
    <path class="glow" d="M92 30l34-8v28l-34-8z" /><path class="ink paper" d="M74 27h18v18H74z" />
    <path class="soft" d="M70 62h66M70 76h66M70 90h44" />`,
  // A van with its cases, and the list that they are ticked off.
  package: svg`
    <path class="ink paper" d="M24 42h84v50H24z" /><path class="ink" d="M108 56h24l14 18v18h-38" />
    <path class="glow" d="M32 50h32v36H32z" /><path class="soft" d="M70 50h30v17H70zM70 71h30v15H70z" />
    <circle class="ink paper" cx="48" cy="96" r="9" /><circle class="ink paper" cx="122" cy="96" r="9" />
    <path class="ink paper" d="M150 14h34v44h-34z" /><path class="soft" d="M164 24h14M164 35h14M164 46h14" />
    <path class="litline" d="M154 24l2 3 4-5M154 35l2 3 4-5M154 46l2 3 4-5" />`,
  // A page of rows with a picture beside them and a hand that finds one.
  'set-up-log': svg`
    <path class="ink paper" d="M30 14h140v94H30z" /><path class="soft" d="M30 34h140M30 52h140M30 70h140M30 88h140M62 14v94" />
    <path class="glow" d="M30 52h140v18H30z" /><path class="ink" d="M38 25h16M70 25h50M70 43h64M70 79h40M70 97h56" />
    <path class="litline" d="M70 61h72" /><path class="ink paper" d="M134 74h28v20h-28z" />
    <circle class="lit" cx="148" cy="84" r="5" /><path class="ink" d="M38 61h14" />`,
  // Cases come back in over the ramp; one place stays empty.
  strike: svg`
    <path class="ink" d="M20 100h60l40-46h60" /><path class="ink paper" d="M126 26h22v26h-22z" />
    <path class="soft" stroke-dasharray="3 3" d="M154 26h22v26h-22z" />
    <path class="ink paper" d="M84 70l20-23 17 15-20 23z" /><path class="lit" d="M34 76h26v22H34z" />
    <path class="litline" d="M132 38l4 5 7-9" /><path class="soft" d="M28 24h52M28 36h40M28 48h46" />`,
  // Two meters with their domes in one light, and the hands a little apart.
  'meter-calibration': svg`
    <path class="glow" d="M100 6 24 52H176Z" />
    <path class="ink paper" d="M44 50h40v56H44zM116 50h40v56h-40z" />
    <path class="lit" d="M52 48a12 12 0 0 1 24 0z" /><path class="ink paper" d="M124 48a12 12 0 0 1 24 0z" />
    <path class="soft" d="M50 84a14 14 0 0 1 28 0M122 84a14 14 0 0 1 28 0M50 96h28M122 96h28" />
    <path class="litline" d="M64 86V70" /><path class="ink" d="M136 86l7-15" />
    <path class="soft" stroke-dasharray="2 4" d="M64 64h72" />`,
  // Readings that fall over the hours, the line through them, and the band they leave.
  timeline: svg`
    <path class="glow faint-glow" d="M28 26h148v30H28z" /><path class="ink" d="M28 14v92h152" />
    <path class="soft" stroke-dasharray="2 4" d="M28 26h148M28 56h148" />
    <path class="soft" d="M54 106v6M84 106v6M114 106v6M144 106v6" />
    <path class="litline" d="M40 34 164 92" />
    <circle class="lit" cx="54" cy="38" r="5" /><circle class="lit" cx="84" cy="57" r="5" />
    <circle class="ink paper" cx="114" cy="67" r="5" /><circle class="ink paper" cx="144" cy="86" r="5" />`,
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
