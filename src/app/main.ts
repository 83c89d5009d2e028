import { startApp } from './app.ts';

const root = document.getElementById('app');
if (root) startApp(root);
