/**
 * No word that a person reads stands in code. Looked at where people are spoken to: text and labels in JSX, text put
 * into the document or the scene, and anything that reads like a sentence. Messages of errors are for developers.
 */
import { folderOf } from '../layers';
import { type Finding, findingAt, type Node, nameOf, type Rule, textOf, walk } from '../sourceFile';

const SPEAKS = new Set([
  'twin',
  'scoring',
  'instruments',
  'bay',
  'panels',
  'workshop',
  'export',
  'app',
  'cli',
]);
const LABELS = new Set([
  'title',
  'placeholder',
  'alt',
  'label',
  'aria-label',
  'ariaLabel',
  'aria-description',
]);
const TEXTS = new Set(['textContent', 'innerText', 'nodeValue', ...LABELS]);
const SENTENCE = /(^|\s)[A-Za-z]{2,},? [a-z]{1,},? [a-z]{2,}/;
const LETTERS = /[A-Za-z]{2,}/;

export const wordsInFiles: Rule = {
  name: 'words in files',
  check(file) {
    if (!SPEAKS.has(folderOf(file.path) ?? '')) return [];
    const findings: Finding[] = [];
    walk(file.tree, (node, parents) => {
      const text = node.type === 'JSXText' ? (node.value as string) : (quasiOf(node) ?? textOf(node));
      if (text === undefined || !isSpoken(node, text, parents)) return;
      findings.push(findingAt(file, node, `"${text.trim()}" belongs to shared/words`));
    });
    return findings;
  },
};

const quasiOf = (node: Node): string | undefined =>
  node.type === 'TemplateElement' ? (node.value as { cooked: string }).cooked : undefined;

function isSpoken(node: Node, text: string, parents: readonly Node[]): boolean {
  if (!LETTERS.test(text)) return false;
  const parent = parents.at(-1) as Node;
  if (node.type === 'JSXText') return true;
  if (parent.type === 'JSXAttribute') return LABELS.has(nameOf(parent.name) ?? '');
  if (parent.type === 'AssignmentExpression' && isTextOf(parent.left as Node)) return true;
  if (isSetLabel(parent, node)) return true;
  return SENTENCE.test(text) && !parents.some(isForDevelopers) && !/^(use|M|var)\b/.test(text);
}

const isTextOf = (target: Node): boolean =>
  target.type === 'MemberExpression' && TEXTS.has(nameOf(target.property) ?? '');

/** `setAttribute('aria-label', 'text')`. */
function isSetLabel(call: Node, node: Node): boolean {
  if (call.type !== 'CallExpression') return false;
  const [name, value] = call.arguments as Node[];
  const method = nameOf((call.callee as Node).property);
  return method === 'setAttribute' && value === node && LABELS.has(textOf(name) ?? '');
}

function isForDevelopers(node: Node): boolean {
  const isError = node.type === 'NewExpression' && /Error$/.test(nameOf(node.callee) ?? '');
  return (
    isError || node.type === 'ThrowStatement' || node.type === 'JSXAttribute' || node.type === 'TSLiteralType'
  );
}
