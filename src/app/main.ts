import { speak } from '../words/words.ts';
import { languageFor, languages } from './languages.ts';

const language = languageFor(navigator.languages, languages);
if (language) {
  speak(await language.load());
  document.documentElement.lang = language.tag;
}

// What the app says is read as its modules load, so the language comes first.
const { startApp } = await import('./app.ts');
const root = document.getElementById('app');
if (root) startApp(root);
