import { defineConfig } from 'eslint/config';
import { builtinRules } from 'eslint/use-at-your-own-risk';
import tseslint from 'typescript-eslint';

const clock = 'The clock is injected: take `now` from what you were given.';
const html = 'Text becomes markup here. Use lit-html templates or textContent.';
const locale = 'Name the locale: the default one differs from machine to machine.';

/** A missing property reads as the word undefined, so the kind of the argument is asked first. */
const nothingNamed =
  ":matches([arguments.length=0], [arguments.0.type='Identifier'][arguments.0.name='undefined'])";

const injected = [
  {
    selector: "CallExpression[callee.object.name='Date'][callee.property.name='now']",
    message: clock,
  },
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: clock },
  { selector: "CallExpression[callee.name='Date']", message: clock },
  {
    selector: "MemberExpression[object.name='Math'][property.name='random']",
    message: 'Chance is injected: take it from what you were given.',
  },
  { selector: `CallExpression[callee.property.name=/^toLocale/]${nothingNamed}`, message: locale },
  {
    selector: "CallExpression[callee.property.name='localeCompare'][arguments.length<2]",
    message: locale,
  },
  {
    selector: `:matches(NewExpression, CallExpression)[callee.object.name='Intl']${nothingNamed}`,
    message: locale,
  },
];

const markup = [
  {
    selector: 'MemberExpression[property.name=/^(innerHTML|outerHTML|insertAdjacentHTML)$/]',
    message: html,
  },
  {
    selector: 'Identifier[name=/^(unsafeHTML|unsafeSVG|createContextualFragment)$/]',
    message: html,
  },
];

/** The same rule under a second name: one length to think about, one to stop at. */
const house = { rules: { 'long-file': builtinRules.get('max-lines') } };
const lines = (max) => ({ max, skipBlankLines: true, skipComments: true });

export default defineConfig(
  { ignores: ['dist/', 'dist-tests/', 'node_modules/', 'coverage/'] },
  tseslint.configs.recommended,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-new-func': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  {
    files: ['functions/**/*.ts', 'src/**/*.{ts,mjs}'],
    plugins: { house },
    rules: { 'house/long-file': ['warn', lines(250)], 'max-lines': ['error', lines(400)] },
  },
  {
    files: ['functions/**/*.ts', 'src/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', ...injected, ...markup] },
  },
  {
    files: ['src/app/**/*.ts', 'src/tools/**'],
    rules: { 'no-restricted-syntax': ['error', ...markup] },
  },
  {
    // Generated: one line for each function.
    files: ['functions/all.ts'],
    rules: { 'house/long-file': 'off', 'max-lines': 'off' },
  },
  { files: ['**/*.js'], extends: [tseslint.configs.disableTypeChecked] },
);
