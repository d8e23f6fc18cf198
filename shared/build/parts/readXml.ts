/**
 * Reads the little of XML that a part file needs, and keeps where everything stood: elements, attributes in double
 * quotes, text, comments. Anything else (document types, character data sections, further entities) is refused.
 */
import type { Refuse } from './partError.ts';

export interface XmlAttribute {
  readonly value: string;
  /** Where its value begins. */
  readonly offset: number;
}

export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, XmlAttribute>;
  readonly children: readonly XmlElement[];
  readonly text: string;
  readonly offset: number;
}

interface Open {
  readonly name: string;
  readonly attributes: Map<string, XmlAttribute>;
  readonly children: XmlElement[];
  text: string;
  readonly offset: number;
}

const HEADER = /<\?xml [^?]*\?>\s*/y;
const COMMENT = /<!--(?:(?!--)[\s\S])*-->/y;
const TEXT = /[^<]+/y;
const CLOSE = /<\/([a-zA-Z]+)\s*>/y;
const OPEN = /<([a-zA-Z]+)/y;
const ATTRIBUTE = /\s+([a-zA-Z][a-zA-Z0-9:-]*)="([^"<]*)"/y;
const END = /\s*(\/?)>/y;
const ENTITY = /&(lt|gt|amp|quot);|&/g;
const MEANT: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"' };

/** The one element of a document. */
export function readXml(source: string, refuse: Refuse): XmlElement {
  let at = 0;
  let root: XmlElement | undefined;
  const open: Open[] = [];
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(source);
    if (found) at = pattern.lastIndex;
    return found;
  };
  const close = (element: XmlElement): void => {
    const parent = open.at(-1);
    if (parent) parent.children.push(element);
    else if (root) refuse(element.offset, 'a second root element');
    else root = element;
  };
  take(HEADER);
  while (at < source.length) {
    const from = at;
    if (take(COMMENT)) continue;
    const text = take(TEXT);
    if (text) {
      const inside = open.at(-1);
      if (inside) inside.text += plain(text[0], from, refuse);
      else if (text[0].trim() !== '') refuse(from, 'text outside the root element');
      continue;
    }
    const end = take(CLOSE);
    if (end) {
      const element = open.pop();
      if (element?.name !== end[1])
        refuse(from, `</${end[1]}> closes ${element ? `<${element.name}>` : 'nothing'}`);
      close(element as XmlElement);
      continue;
    }
    const start = take(OPEN);
    if (!start) refuse(from, 'not an element, a comment or text');
    const element: Open = {
      name: (start as RegExpExecArray)[1] as string,
      attributes: new Map(),
      children: [],
      text: '',
      offset: from,
    };
    for (let found = take(ATTRIBUTE); found; found = take(ATTRIBUTE))
      addAttribute(element, found, at, refuse);
    const tail = take(END);
    if (!tail) refuse(at, `not an attribute in double quotes, and <${element.name}> is not closed`);
    if ((tail as RegExpExecArray)[1] === '/') close(element);
    else open.push(element);
  }
  const unclosed = open.at(-1);
  if (unclosed) refuse(unclosed.offset, `<${unclosed.name}> is never closed`);
  return root ?? refuse(0, 'holds no element');
}

function addAttribute(element: Open, found: RegExpExecArray, end: number, refuse: Refuse): void {
  const [, name, raw] = found as unknown as [string, string, string];
  const offset = end - raw.length - 1;
  if (element.attributes.has(name)) refuse(offset, `"${name}" stands twice`);
  element.attributes.set(name, { value: plain(raw, offset, refuse), offset });
}

const plain = (text: string, offset: number, refuse: Refuse): string =>
  text.replace(ENTITY, (_, name: string | undefined, place: number) =>
    name === undefined ? refuse(offset + place, 'a bare "&"; write &amp;') : (MEANT[name] as string),
  );
