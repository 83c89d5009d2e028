import { speakFirstOf } from '../words/languages.ts';

document.documentElement.lang = await speakFirstOf(navigator.languages);

// What the app says is read as its modules load, so the language comes first.
const { startApp } = await import('./app.ts');
const root = document.getElementById('app');
if (root) startApp(root);
