/**
 * A printed page as one file that needs nothing else: its tree as markup, with the style sheet in it; `more` is its own.
 * Its words are of the language that is set.
 */
import { spokenLanguage } from '../../words/words';
import { safe } from '../report/page';
import STYLE from './card.css?raw';
import { classesOf, type Leaf } from './leaf';

export function sheetMarkup(title: string, sheet: Leaf, more = ''): string {
  return [
    `<!doctype html><html lang="${spokenLanguage()}"><head><meta charset="utf-8">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${safe(title)}</title><style>${STYLE}${more}</style></head><body>`,
    markup(sheet),
    '</body></html>\n',
  ].join('\n');
}

function markup(part: Leaf): string {
  const { tag, kind, inside } = part;
  const within = inside.map((one) => (typeof one === 'string' ? safe(one) : markup(one))).join('');
  const named = kind === '' ? '' : ` class="${safe(classesOf(part))}"`;
  return `<${tag}${named}>${within}</${tag}>`;
}
