/** The verbs of src/cli/verbs, one a file, by name. A module of its own: what a glob brings is run before a file's other imports. */
import type { Verb } from './verb';

const files = import.meta.glob<Verb>('./verbs/*.ts', { eager: true, import: 'default' });

export const verbs: readonly Verb[] = Object.values(files).sort((a, b) => (a.name < b.name ? -1 : 1));
