/** Composition root of the page: styles, then the shelf. What a session needs is loaded when one is opened. */
import './styles/index.css';
import { startApp } from './App';
import { speak } from './language';
import { settings } from './settings';

const root = document.querySelector('#app');
if (root instanceof HTMLElement) {
  void speak(settings().language).then(() => startApp(root));
}
