import { html, render } from 'lit-html';
import { words } from '../../words/words.ts';
import type { Feedback } from '../feedback.ts';

/** Lays one page into its place on paper. */
export type LayPage = (host: HTMLElement) => void;

/** All that a learner needs on paper. */
export interface PaperHandout {
  readonly title: string;
  readonly learner: string;
  readonly givens: readonly (readonly [label: string, text: string])[];
  readonly questions: readonly { readonly text: string; readonly points: string }[];
  readonly beside: readonly (readonly string[])[];
}

const laid =
  (content: unknown): LayPage =>
  (host) =>
    render(html`<article class="handover teach-page">${content}</article>`, host);

const pageHead = (title: string, learner: string) =>
  html`<header>
    <p>${title}</p>
    <h2>${learner}</h2>
  </header>`;

export const handoutPage = ({ title, learner, givens, questions, beside }: PaperHandout): LayPage =>
  laid(
    html`${pageHead(title, learner)}
      <section>
        <h3>${words.teach.given}</h3>
        <dl>
          ${givens.map(
            ([label, text]) =>
              html`<div>
                <dt>${label}</dt>
                <dd>${text}</dd>
              </div>`,
          )}
        </dl>
      </section>
      <section>
        <h3>${words.teach.questions}</h3>
        <ol class="lines">
          ${questions.map(({ text, points }) => html`<li>${text} <small>${points}</small></li>`)}
        </ol>
      </section>
      ${
        beside.length > 0
          ? html`<table class="beside">
              ${beside.map(
                (row) =>
                  html`<tr>
                    ${row.map((cell) => html`<td>${cell}</td>`)}
                  </tr>`,
              )}
            </table>`
          : ''
      }`,
  );

export const keyPage = (
  title: string,
  rows: readonly { readonly learner: string; readonly answers: readonly string[] }[],
): LayPage =>
  laid(
    html`${pageHead(title, words.teach.key)}
      <table>
        ${rows.map(
          ({ learner, answers }) =>
            html`<tr>
              <th scope="row">${learner}</th>
              ${answers.map((answer, index) => html`<td>${String(index + 1)}. ${answer}</td>`)}
            </tr>`,
        )}
      </table>`,
  );

export const feedbackPage = (
  title: string,
  learner: string,
  points: string,
  feedback: readonly Feedback[],
): LayPage =>
  laid(
    html`${pageHead(title, `${learner}: ${points}`)}
    ${feedback.map(
      ({ text, typed, verdict, points: own, expected, solution }) =>
        html`<section>
          <h3>${text}</h3>
          <p>
            ${words.teach.yourAnswer}: <b>${typed || words.teach.noneYet}</b> · ${verdict} · ${own}
          </p>
          <p>${words.teach.expected}: <b>${expected}</b>. ${solution ?? ''}</p>
        </section>`,
    )}`,
  );
