/** Composition root of the page. */
import { word } from '../words/words';

const root = document.querySelector('#app');
if (root) root.textContent = word('app.title');
