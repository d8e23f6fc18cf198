/** Changes of a text that leave everything else of it as it is, remarks included. */
export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** What the text is after them; they do not overlap. */
export function changed(text: string, changes: readonly TextChange[]): string {
  const inOrder = [...changes].sort((a, b) => b.from - a.from);
  return inOrder.reduce((so, { from, to, insert }) => so.slice(0, from) + insert + so.slice(to), text);
}
