/** A printed page as a tree of elements and text: one tree for the page in a browser and for the file. */
export type LeafTag =
  | 'article'
  | 'section'
  | 'header'
  | 'footer'
  | 'div'
  | 'h1'
  | 'h2'
  | 'p'
  | 'b'
  | 'span'
  | 'ul'
  | 'li'
  | 'dl'
  | 'dt'
  | 'dd'
  | 'table'
  | 'thead'
  | 'tbody'
  | 'tr'
  | 'th'
  | 'td';

export interface Leaf {
  readonly tag: LeafTag;
  /** Class in the style sheet; '' for none. */
  readonly kind: string;
  readonly inside: readonly (Leaf | string)[];
}

export const leaf = (tag: LeafTag, kind: string, ...inside: readonly (Leaf | string)[]): Leaf => ({
  tag,
  kind,
  inside,
});

/** Its classes as the style sheet has them, so that a page's own never meet them. */
export const classesOf = ({ kind }: Leaf): string =>
  kind
    .split(' ')
    .filter((one) => one !== '')
    .map((one) => `cc-${one}`)
    .join(' ');

/** Names and what they are, one under the other. */
export const pairs = (rows: readonly (readonly [name: string, text: string])[]): Leaf =>
  leaf('dl', 'pairs', ...rows.flatMap(([name, text]) => [leaf('dt', '', name), leaf('dd', '', text)]));

export const list = (kind: string, lines: readonly string[]): Leaf =>
  leaf('ul', kind, ...lines.map((line) => leaf('li', '', line)));

/** A line to write on, with its name under it. */
export const blank = (name: string): Leaf => leaf('div', 'blank', leaf('span', '', name));
