import { english } from '../../../src/words/english.ts';
import { speak } from '../../../src/words/words.ts';
import { bracketed } from '../../support/bracketed.ts';

speak(bracketed(english));
const { startApp } = await import('../../../src/app/app.ts');
const root = document.querySelector<HTMLElement>('#app');
if (!root) throw new Error('The page has no app.');
startApp(root);
