/** Inside it is SI: psi, degrees Fahrenheit, ounces and the like are named only in src/units and from the instruments up. */
import { folderOf, isBelowScreen } from '../layers';
import { type Finding, findingAt, type Node, nameOf, type Rule, textOf, walk } from '../sourceFile';

const UNITS = new Set([
  'psi',
  'psig',
  'psia',
  'fahrenheit',
  'inhg',
  'ounce',
  'ounces',
  'oz',
  'lbs',
  'rankine',
]);

/** Word ids name what the sentence is about; a sentence may be about a unit. */
const NAMED_IN = new Set(['units', 'words']);
/** Longer texts are data, such as a table in base64. */
const LONGEST_TEXT = 80;

export const tradeUnits: Rule = {
  name: 'trade units',
  check(file) {
    if (!isBelowScreen(file.path) || NAMED_IN.has(folderOf(file.path) ?? '')) return [];
    const findings: Finding[] = [];
    walk(file.tree, (node: Node) => {
      const text = nameOf(node) ?? textOf(node);
      const unit = text === undefined || text.length > LONGEST_TEXT ? undefined : unitIn(text);
      if (unit) findings.push(findingAt(file, node, `${unit} belongs to src/units`));
    });
    return findings;
  },
};

/** Looks at whole words of a name or text, so that `epsilon` is no unit. */
function unitIn(text: string): string | undefined {
  if (/[dD]eg ?F(?![a-z])|°F/.test(text)) return 'degF';
  const words = text
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z]+/);
  return words.find((word) => UNITS.has(word));
}
