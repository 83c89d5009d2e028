import type { CellPicture } from '../contract.ts';
import { verdictShape } from './shapes.ts';
import { spokenCell } from './spoken.ts';

/** A third, a half, a tenth after a number or a sign: `f/1.4 1/3`, `−1/2`. Not `1/50 s`. */
const thirds = /(?<=^|[\s+−-])\d{1,2}\/(?:10|[2-9])(?![\d/])/g;

/** What was last put into each element, so that an unchanged cell costs one comparison. */
const painted = new WeakMap<HTMLElement, string>();

/** Puts a picture into a cell element, as text nodes only, and gives the classes it should carry. */
export function paintCell(element: HTMLElement, picture: CellPicture): string {
  const content = `${picture.verdict ?? ''}\n${picture.unit ?? ''}\n${picture.align ?? ''}\n${picture.text}`;
  if (painted.get(element) !== content) {
    painted.set(element, content);
    element.replaceChildren(...nodesOf(picture));
  }
  const spoken = spokenCell(picture);
  if (spoken === picture.text) element.removeAttribute('aria-label');
  else element.setAttribute('aria-label', spoken);
  return classesOf(picture);
}

/** Whether anything stands in the cell. */
export function isWritten({ text, verdict }: CellPicture): boolean {
  return text !== '' || verdict !== undefined;
}

/** Whether words that run on stop before it: the mark of what a cell is for would be covered too. */
export function isTaken(picture: CellPicture): boolean {
  return isWritten(picture) || picture.role !== undefined;
}

function nodesOf(picture: CellPicture): Node[] {
  const { text, unit, verdict, align } = picture;
  const nodes: Node[] = [];
  if (verdict) nodes.push(verdictShape(verdict));
  if (text !== '') {
    const words = document.createElement('span');
    words.className = 'words';
    words.append(...(align === 'right' || verdict ? withFractions(text) : [text]));
    nodes.push(words);
  }
  if (unit) {
    const small = document.createElement('small');
    small.textContent = unit;
    nodes.push(small);
  }
  return nodes;
}

function withFractions(text: string): (Node | string)[] {
  const parts: (Node | string)[] = [];
  let end = 0;
  for (const match of text.matchAll(thirds)) {
    const fraction = document.createElement('span');
    fraction.className = 'fraction';
    fraction.textContent = match[0];
    parts.push(text.slice(end, match.index), fraction);
    end = match.index + match[0].length;
  }
  parts.push(text.slice(end));
  return parts;
}

function classesOf(picture: CellPicture): string {
  const { align, bold, italic, heading, state, role, verdict, remark, note } = picture;
  const classes = ['cell', align ?? 'left'];
  if (isWritten(picture)) classes.push('filled');
  if (bold) classes.push('bold');
  if (italic) classes.push('italic');
  if (heading) classes.push('heading');
  if (state) classes.push(state);
  if (role) classes.push(role);
  if (verdict) classes.push('verdict', verdict);
  if (remark) classes.push('remark');
  if (note) classes.push('note');
  return classes.join(' ');
}
