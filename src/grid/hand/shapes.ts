import type { VerdictShape } from '../contract.ts';

const namespace = 'http://www.w3.org/2000/svg';

/** Outlines in a 10 by 10 box. Direction is in the shape: up, down, level, a dash, cut off at a line. */
const outlines: Readonly<Record<VerdictShape, { readonly d: string; readonly filled: boolean }>> = {
  over: { d: 'M5 1 9.5 9h-9z', filled: true },
  under: { d: 'M5 9 .5 1h9z', filled: true },
  agrees: { d: 'M1 3.5h8M1 6.5h8', filled: false },
  waits: { d: 'M2 5h6', filled: false },
  clips: { d: 'M1 1.2h8M5 3.4 9 9.5H1z', filled: true },
};

export function verdictShape(shape: VerdictShape): SVGSVGElement {
  const svg = document.createElementNS(namespace, 'svg');
  svg.setAttribute('viewBox', '0 0 10 10');
  svg.setAttribute('class', `shape ${outlines[shape].filled ? 'filled' : 'drawn'}`);
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS(namespace, 'path');
  path.setAttribute('d', outlines[shape].d);
  svg.append(path);
  return svg;
}
