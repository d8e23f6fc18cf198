/** Rows in words, aligned: a column is as wide as what it holds, up to a limit; what is longer goes on below, in its column. */

const WIDTH = 120;
/** Of a column that is not the last. */
const MOST = 28;
const LEAST_LAST = 22;
const GAP = '  ';
/** Blanks that hold a number to its unit. */
const TIED = /[\u00a0\u202f]/g;

export function tableText(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [headings, ...rows];
  const widths: number[] = [];
  for (const at of headings.keys()) {
    const isLast = at === headings.length - 1;
    const left = WIDTH - widths.reduce((sum, one) => sum + one + GAP.length, 0);
    const most = isLast ? Math.max(left, LEAST_LAST) : MOST;
    const cells = all.map((row) => row[at]);
    const longest = Math.max(...cells.flatMap((cell) => cell.split('\n').map((line) => line.length)));
    const word = isLast
      ? 0
      : Math.max(...cells.flatMap((cell) => cell.split(/[ \n]/).map((one) => one.length)));
    widths.push(Math.max(Math.min(longest, most), word));
  }
  const rule = widths.map((width) => '-'.repeat(width));
  return [headings, rule, ...rows].flatMap((row) => linesOf(row, widths)).join('');
}

function linesOf(row: readonly string[], widths: readonly number[]): string[] {
  const cells = row.map((cell, at) => cell.split('\n').flatMap((line) => wrapped(line, widths[at])));
  const height = Math.max(...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) => {
    const parts = cells.map((lines, at) => (lines[line] ?? '').padEnd(widths[at]));
    return `${parts.join(GAP).trimEnd()}\n`.replace(TIED, ' ');
  });
}

/** A word that is wider than the column stands on a line of its own. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > width && line !== '') {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
