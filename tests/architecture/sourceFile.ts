/** A source file with its syntax tree, and a walk over that tree. Rules look at the tree, so comments never count. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from 'vite';
import { projectFolder } from '../../shared/build/folders';

/** One node of the tree; `type` says which fields it has (the ESTree form, with TypeScript and JSX). */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

export interface SourceFile {
  /** From the project's top level, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly tree: Node;
}

export interface Finding {
  readonly path: string;
  readonly line: number;
  readonly what: string;
}

export interface Rule {
  readonly name: string;
  readonly check: (file: SourceFile) => Finding[];
}

/** One row a finding, so that a failure reads as a list. */
export const show = ({ path, line, what }: Finding): string => `${path}:${line} ${what}`;

export function parse(path: string, text: string): SourceFile {
  const { program, errors } = parseSync(path, text);
  if (errors[0]) throw new Error(`${path}: ${errors[0].message}`);
  return { path, text, tree: program as unknown as Node };
}

export function findingAt(file: SourceFile, node: Node, what: string): Finding {
  const line = file.text.slice(0, node.start).split('\n').length;
  return { path: file.path, line, what };
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** Every node, parents first; `parents` ends with the nearest. */
export function walk(root: Node, visit: (node: Node, parents: readonly Node[]) => void): void {
  const parents: Node[] = [];
  const step = (node: Node): void => {
    visit(node, parents);
    parents.push(node);
    for (const value of Object.values(node)) {
      if (Array.isArray(value)) {
        for (const item of value) if (isNode(item)) step(item);
      } else if (isNode(value)) step(value);
    }
    parents.pop();
  };
  step(root);
}

/** The text of a string, or of a template without parts to fill in. */
export function textOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  const quasis = node.quasis as { value: { cooked: string } }[] | undefined;
  if (node.type === 'TemplateLiteral' && quasis?.length === 1) return quasis[0]?.value.cooked;
  return undefined;
}

export const nameOf = (node: unknown): string | undefined =>
  isNode(node) && (node.type === 'Identifier' || node.type === 'JSXIdentifier')
    ? (node.name as string)
    : undefined;

/** Every TypeScript and script file under `folders` of the project. */
export function sourceFiles(folders: readonly string[]): SourceFile[] {
  return filesUnder(folders, /\.(ts|tsx|mjs)$/).map((path) =>
    parse(path, readFileSync(join(projectFolder, path), 'utf8')),
  );
}

/** Paths under `folders` that match, sorted. */
export function filesUnder(folders: readonly string[], pattern: RegExp): string[] {
  const found: string[] = [];
  const look = (folder: string): void => {
    if (!statSync(join(projectFolder, folder), { throwIfNoEntry: false })) return;
    for (const entry of readdirSync(join(projectFolder, folder), { withFileTypes: true })) {
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) look(path);
      else if (pattern.test(entry.name)) found.push(path);
    }
  };
  for (const folder of folders) look(folder);
  return found.sort();
}
