import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../../functions/index.ts';
import type { WrittenExample } from '../../reference/examples.ts';
import { manners } from '../../reference/manners.ts';
import {
  bibliographyOf,
  referenceOf,
  type FamilyPage,
  type FunctionPage,
  type ParameterLine,
} from '../../reference/page.ts';
import { root } from '../root.mjs';

const { name: packageName } = JSON.parse(
  readFileSync(join(root, 'functions/package.json'), 'utf8'),
) as { name: string };

/** The function reference beside the functions, from what each of them says of itself. */
export function generate() {
  const families = referenceOf(catalogue);
  const pages = families.flatMap(({ functions }) => functions);
  const text = [
    opening(pages.length),
    contents(families),
    ...families.map(family),
    bibliography(pages),
  ].join('\n\n');
  return [{ path: 'functions/README.md', text: `${text}\n` }];
}

const opening = (count: number) => `# What light does

<!-- Written by src/tools/generate/reference.ts from the definitions in this folder. -->

${String(count)} functions for people who light sets: stops, exposure, distance, filters, colour, power, flicker and the sun. They are pure, depend on nothing, and are under the MIT licence. Each is one file in its family’s folder, and this page is written from those files.

## Use

In a sheet, type \`=FSTOPS("f/2.8", "f/11")\`. In a program:

\`\`\`js
import { FSTOPS } from '${packageName}';
import { call } from '${packageName}/call';
import { usual } from '${packageName}/usual';

call(FSTOPS, ['f/2.8', 'f/11'], usual); // -4
\`\`\`

\`call\` reads texts with units and checks every argument. It never throws and never gives NaN: what cannot be is a \`{ code, message }\` that says why. The package needs JavaScript modules (Node 20 or any browser of today) and carries its types.

${manners.map((one) => `- ${one}`).join('\n')}`;

const heading = ({ title }: FamilyPage) => title;
const anchor = (text: string) =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9 -]/g, '')
    .replaceAll(' ', '-');
const link = (text: string) => `[${text}](#${anchor(text)})`;

function contents(families: readonly FamilyPage[]): string {
  const lines = families.map(
    (one) =>
      `- **${link(heading(one))}**: ${one.functions.map(({ name }) => link(name)).join(', ')}`,
  );
  return ['## Contents', [...lines, `- **${link('Sources')}**`].join('\n')].join('\n\n');
}

function family(one: FamilyPage): string {
  return [`## ${heading(one)}`, ...one.functions.map(section)].join('\n\n');
}

function section(page: FunctionPage): string {
  return [
    `### ${page.name}`,
    `**${plainText(page.summary)}** ${plainText(page.job)}`,
    `\`${page.signature}\` → ${plainText(page.result)}`,
    parameterTable(page.parameters),
    equation(page),
    page.examples.map(example).join('\n'),
    `**Limits.** ${plainText(page.limits)}`,
    [
      `**Sources.** ${page.sources.map(citation).join('; ')}.`,
      `**See also** ${page.alike.map(link).join(', ')}.`,
      `**Found by** ${page.search.map(plainText).join(', ')}.`,
    ].join(' '),
  ].join('\n\n');
}

function parameterTable(parameters: readonly ParameterLine[]): string {
  const optional = parameters.some(({ leftOut }) => leftOut !== undefined);
  const heads = ['argument', 'what it is', 'takes', 'allowed', ...(optional ? ['left out'] : [])];
  const rows = parameters.map((one) => [
    `\`${one.name}\``,
    plainText(one.help),
    plainText(one.takes),
    plainText(
      [one.allowed || 'any', one.usual && `usually ${one.usual}`].filter(Boolean).join('; '),
    ),
    ...(optional ? [plainText(one.leftOut ?? '')] : []),
  ]);
  return [heads, heads.map(() => '---'), ...rows]
    .map((cells) => `| ${cells.join(' | ')} |`)
    .join('\n');
}

function equation({ equation: text, plain }: FunctionPage): string {
  if (plain.expands) return `**Plain formula.** \`${String(text)}\``;
  const reason = `**No plain formula.** ${plainText(plain.reason)}`;
  return text === undefined ? reason : `**Equation.** \`${text}\`\n\n${reason}`;
}

function example({ formula, cells, result, why, rounded, source }: WrittenExample): string {
  const holding = cells.map(({ range, holds }) => ` with ${holds} in ${range}`).join(' and');
  const printed = source === undefined ? '' : ` ([${source}](#sources))`;
  return `- \`${formula}\`${holding} ${rounded ? '≈' : '='} **${plainText(result)}**: ${plainText(why)}${printed}`;
}

const citation = ({ from, at }: FunctionPage['sources'][number]) =>
  `[${from}](#sources)${at === undefined ? '' : `, ${plainText(at)}`}`;

function bibliography(pages: readonly FunctionPage[]): string {
  const lines = bibliographyOf(pages).map(
    ({ name, title }) => `- **${name}.** ${plainText(title)}`,
  );
  return ['## Sources', lines.join('\n')].join('\n\n');
}

/** Words as they stand, whatever Markdown makes of some signs. */
function plainText(text: string): string {
  return text.replaceAll(/[\\`*_<>|[\]]/g, String.raw`\$&`);
}
