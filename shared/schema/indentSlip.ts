/**
 * Which line of a text is indented wrongly. The reader of YAML only knows that two lines do not go together; here the lines
 * that follow decide which of the two is the odd one.
 */
export interface IndentSlip {
  /** From 1. */
  readonly line: number;
  readonly indent: number;
  readonly wanted: number;
}

interface Written {
  readonly line: number;
  readonly indent: number;
  /** Where its key begins: behind the mark of a list item. */
  readonly keyAt: number;
  /** A key with nothing after it: what is deeper belongs to it. */
  readonly opens: boolean;
  /** Where the key of the line above begins, if that has nothing after it. */
  readonly afterOpener: number | undefined;
}

interface Level {
  readonly indent: number;
  readonly from: Written;
}

const KEY = /^(?:- +)*(?:"[^"]*"|'[^']*'|[^\s#:,[\]{}"'][^:#]*):(?=\s|$)(.*)$/;

/** The first slip there is, or null. */
export function indentSlip(text: string): IndentSlip | null {
  const lines = writtenLines(text.split('\n'));
  const levels: Level[] = [];
  /** Levels that the line before left behind. */
  let left: readonly number[] = [];
  for (const [at, line] of lines.entries()) {
    const popped: Level[] = [];
    while (levels.length > 0 && levels[levels.length - 1].indent > line.indent)
      popped.push(levels.pop() as Level);
    const isKnown = levels.at(-1)?.indent === line.indent;
    const slip = isKnown ? null : slipAt(line, { before: lines[at - 1], levels, below: popped.at(-1), left });
    if (slip) return slip;
    if (!isKnown) levels.push({ indent: line.indent, from: line });
    if (line.keyAt > line.indent) levels.push({ indent: line.keyAt, from: line });
    left = popped.map(({ indent }) => indent);
  }
  return null;
}

interface Around {
  readonly before: Written | undefined;
  readonly levels: readonly Level[];
  readonly below: Level | undefined;
  readonly left: readonly number[];
}

/** A line on a level of its own: allowed at the start and below a key that has nothing after it. */
function slipAt(line: Written, { before, levels, below, left }: Around): IndentSlip | null {
  if (before === undefined) return null;
  const slip = (odd: Written, wanted: number): IndentSlip => ({ line: odd.line, indent: odd.indent, wanted });
  if (below !== undefined) {
    const isRight = isUsual(line.indent, levels.at(-1)?.indent ?? -STEP);
    return isRight ? slip(below.from, line.indent) : slip(line, below.indent);
  }
  if (before.opens && line.indent > before.keyAt) return null;
  // the line before left the group that this one belongs to, or began it wrongly
  if (left.includes(line.indent)) return slip(before, line.indent);
  const top = levels[levels.length - 1];
  const isFirst = top.from === before && (levels.length > 1 || before.line === top.from.line);
  const parent = levels.at(-2)?.indent ?? -STEP;
  if (isFirst && isUsual(line.indent, parent) && !isUsual(before.indent, parent))
    return slip(before, line.indent);
  return before.afterOpener === before.indent && isUsual(line.indent, before.indent)
    ? slip(before, line.indent)
    : slip(line, top.indent);
}

/** What belongs to a key stands two spaces further in. */
const STEP = 2;
const isUsual = (indent: number, parent: number): boolean => indent - parent === STEP;

/** Lines that say something, without notes, folded texts and what goes on within brackets. */
function writtenLines(lines: readonly string[]): Written[] {
  const found: Written[] = [];
  let skipOver = -1;
  let open = 0;
  for (const [at, text] of lines.entries()) {
    const trimmed = text.trim();
    if (trimmed === '' || trimmed.startsWith('#')) continue;
    const indent = text.length - text.trimStart().length;
    if (skipOver >= 0 && indent > skipOver) continue;
    skipOver = -1;
    const isWithin = open > 0;
    open = Math.max(0, open + bracketsOf(trimmed));
    if (isWithin) continue;
    const [, rest] = KEY.exec(trimmed) ?? [];
    const value = (rest ?? trimmed).replace(/(^|\s)#.*/, '').trim();
    const mark = /^(?:- +)+/.exec(trimmed)?.[0].length ?? 0;
    const keyAt = indent + (rest === undefined ? 0 : mark);
    if (/^[>|][+-]?\d?$/.test(value)) skipOver = keyAt;
    const above = found.at(-1);
    const afterOpener = above?.opens ? above.keyAt : undefined;
    found.push({ line: at + 1, indent, keyAt, opens: rest !== undefined && value === '', afterOpener });
  }
  return found;
}

/** Brackets opened less those shut, outside of quotes. */
function bracketsOf(text: string): number {
  const bare = text.replace(/"(?:[^"\\]|\\.)*"|'[^']*'/g, '').replace(/\s#.*/, '');
  return (bare.match(/[[{]/g)?.length ?? 0) - (bare.match(/[\]}]/g)?.length ?? 0);
}
