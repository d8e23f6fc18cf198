/** The bones of a page to print: text made safe, tags, and a table. What comes out is one file that needs nothing else. */

export interface ReportSection {
  readonly id: string;
  readonly title: string;
  /** What was run, in a sentence or two. */
  readonly about: string;
  /** Where the figures it is held against come from. */
  readonly source: string;
  /** Plots and tables, as markup. */
  readonly figures: readonly string[];
}

const UNSAFE: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

export const safe = (text: string): string => text.replace(/[&<>"]/g, (sign) => UNSAFE[sign]);

export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = (tag: string, row: readonly string[]): string =>
    row.map((cell) => `<${tag}>${safe(cell)}</${tag}>`).join('');
  const body = rows.map((row) => `<tr>${cells('td', row)}</tr>`).join('\n');
  return `<table><thead><tr>${cells('th', heads)}</tr></thead><tbody>${body}</tbody></table>`;
}

export function sectionMarkup({ id, title, about, source, figures }: ReportSection): string {
  return [
    `<section id="${safe(id)}"><h2>${safe(title)}</h2>`,
    `<p>${safe(about)}</p>`,
    `<div class="figures">${figures.map((figure) => `<figure>${figure}</figure>`).join('\n')}</div>`,
    `<p class="source">${safe(source)}</p></section>`,
  ].join('\n');
}
