import { describe, expect, test } from 'vitest';
import { LAYERS } from './layers';
import { direction } from './rules/direction';
import { fileSize } from './rules/fileSize';
import { insideProject } from './rules/insideProject';
import { noLeftovers } from './rules/noLeftovers';
import { noScreen } from './rules/noScreen';
import { packages } from './rules/packages';
import { sameBits } from './rules/sameBits';
import { textOnly } from './rules/textOnly';
import { tradeUnits } from './rules/tradeUnits';
import { wordsInFiles } from './rules/wordsInFiles';
import { wordsLater } from './rules/wordsLater';
import { parse, type Rule, show } from './sourceFile';

type Case = readonly [Rule, path: string, code: string];

/** What each rule must catch: rule, file it would stand in, code. */
const PLANTED: readonly Case[] = [
  [wordsLater, 'src/panels/a.ts', "const NAMES = [word('app.help')];"],
  [direction, 'src/loop/a.ts', "import { b } from '../plant/b';"],
  [direction, 'src/loop/a.ts', "import type { B } from '../plant/b';"],
  [direction, 'src/loop/a.ts', "export { b } from '../plant/b';"],
  [direction, 'src/loop/a.ts', "export * from '../plant/b';"],
  [direction, 'src/loop/a.ts', "const b = await import('../plant/b');"],
  [direction, 'src/loop/a.ts', 'const b = await import(`../plant/b`);'],
  [direction, 'src/loop/a.ts', "type B = import('../plant/b').B;"],
  [direction, 'src/loop/a.ts', "new Worker(new URL('../plant/b.worker.ts', import.meta.url));"],
  [direction, 'src/loop/a.ts', "const all = import.meta.glob('../plant/*.ts');"],
  [direction, 'src/loop/a.ts', "const all = import.meta.glob(['./c/*.ts', '../plant/*.ts']);"],
  [direction, 'src/loop/a.ts', 'const b = await import(name);'],
  [direction, 'src/loop/a.ts', "import { b } from '../layout/b';"],
  [direction, 'src/app/a.ts', "import { b } from '../cli/b';"],
  [direction, 'src/app/a.ts', "import { b } from '../../tests/support/b';"],
  [direction, 'src/app/a.ts', "import { b } from '../../shared/build/server';"],
  [direction, 'src/helpers/a.ts', 'export const a = 1;'],
  [direction, 'shared/schema/a.ts', "import { b } from '../../src/loop/b';"],
  [packages, 'src/panels/a.ts', "import { Application } from 'pixi.js';"],
  [packages, 'src/app/a.ts', "import 'pixi.js/unsafe-eval';"],
  [packages, 'src/panels/a.ts', "import Matter from 'matter-js';"],
  [packages, 'src/scoring/a.ts', "import { createActor } from 'xstate';"],
  [packages, 'src/session/a.ts', "import { readFileSync } from 'node:fs';"],
  [packages, 'src/loop/a.ts', "import left from 'left-pad';"],
  [sameBits, 'src/loop/a.ts', 'export const a = Math.exp(1);'],
  [sameBits, 'src/loop/a.ts', 'export const { pow } = Math;'],
  [sameBits, 'src/loop/a.ts', "export const a = Math['sin'](1);"],
  [sameBits, 'src/prover/a.ts', 'export const a = Math.random();'],
  [sameBits, 'src/units/a.ts', 'export const a = 2 ** 3;'],
  [sameBits, 'src/units/a.ts', 'let a = 2; a **= 3;'],
  [sameBits, 'src/session/a.ts', 'export const a = Date.now();'],
  [sameBits, 'src/session/a.ts', 'export const a = new Date();'],
  [sameBits, 'src/plant/a.ts', 'export const a = performance.now();'],
  [sameBits, 'src/words/a.ts', "export const a = 'a'.localeCompare('b');"],
  [noScreen, 'src/session/a.ts', "document.querySelector('a');"],
  [noScreen, 'src/twin/a.ts', 'window.close();'],
  [noScreen, 'src/session/a.ts', 'setTimeout(go, 10);'],
  [noScreen, 'src/panels/a.ts', 'process.exit(1);'],
  [tradeUnits, 'src/loop/a.ts', 'export const pressurePsi = 1;'],
  [tradeUnits, 'src/loop/a.ts', "export const unit = 'psi';"],
  [tradeUnits, 'src/session/a.ts', "import { fromDegF } from '../units/temperature';"],
  [textOnly, 'src/panels/a.ts', 'element.innerHTML = text;'],
  [textOnly, 'src/panels/a.tsx', 'const a = <div innerHTML={text} />;'],
  [textOnly, 'src/panels/a.ts', "element['outerHTML'] = text;"],
  [textOnly, 'src/panels/a.ts', 'document.write(text);'],
  [textOnly, 'src/panels/a.ts', 'eval(text);'],
  [textOnly, 'src/panels/a.ts', 'new Function(text);'],
  [wordsInFiles, 'src/panels/a.tsx', 'const a = <p>Start the engine</p>;'],
  [wordsInFiles, 'src/panels/a.tsx', 'const a = <button aria-label="Close" />;'],
  [wordsInFiles, 'src/panels/a.ts', "element.textContent = 'Close';"],
  [wordsInFiles, 'src/panels/a.ts', "element.setAttribute('aria-label', 'Close');"],
  [wordsInFiles, 'src/twin/a.ts', "say('The clutch is turning.');"],
  [wordsInFiles, 'src/twin/a.ts', 'say(`The clutch is turning at \x24{speed}`);'],
  [insideProject, 'src/cli/a.ts', "read('../../../outside.json');"],
  [insideProject, 'tests/support/a.ts', "read('/home/somebody/file');"],
  [fileSize, 'src/loop/a.ts', 'a;\n'.repeat(301)],
  [noLeftovers, 'src/loop/a.ts', `// ${'TO'}${'DO'} later`],
  [noLeftovers, 'tests/loop/a.test.ts', `${'test.sk'}${'ip'}('a', () => {});`],
];

/** What must pass: names and texts that only look like a breach. */
const ALLOWED: readonly Case[] = [
  [direction, 'src/plant/a.ts', "import { b } from '../loop/b'; import { c } from './c';"],
  [direction, 'src/loop/a.ts', "const all = import.meta.glob('../../shared/vehicles/*.yaml');"],
  [direction, 'src/cli/a.ts', "import { b } from '../prover/b';"],
  [direction, 'shared/schema/a.ts', "import { b } from '../../src/units/b';"],
  [packages, 'src/bay/a.ts', "import { Application } from 'pixi.js';"],
  [packages, 'src/session/states/a.ts', "import { setup } from 'xstate';"],
  [sameBits, 'src/loop/a.ts', '// Math.exp would differ\nexport const a = Math.sqrt(Math.PI * Math.abs(2));'],
  [sameBits, 'src/app/a.ts', 'export const a = Math.sin(performance.now());'],
  [noScreen, 'src/suspects/a.ts', 'export const a = (window: number) => window + 1;'],
  [noScreen, 'src/session/a.ts', 'export const a = { history: 1 }.history;'],
  [tradeUnits, 'src/numerics/a.ts', 'export const epsilon = 1; // psi'],
  [tradeUnits, 'src/instruments/a.ts', "export const unit = 'psi';"],
  [wordsInFiles, 'src/panels/a.ts', "throw new Error('no such part in this layout');"],
  [wordsInFiles, 'src/panels/a.tsx', 'const a = <p class="panel wide tall quiet">{word(id)}</p>;'],
  [insideProject, 'src/cli/a.ts', "import { b } from '../../shared/schema/b';"],
  [fileSize, 'src/loop/a.ts', 'a;\n'.repeat(300)],
];

const named = (cases: readonly Case[]) =>
  cases.map(([rule, path, code]) => [rule.name, path, code.split('\n')[0], rule, code] as const);

describe('the rules', () => {
  test.each(named(PLANTED))('%s catches, in %s: %s', (_, path, __, { check }, code) => {
    expect(check(parse(path, code))).not.toEqual([]);
  });

  test.each(named(ALLOWED))('%s lets pass, in %s: %s', (_, path, __, { check }, code) => {
    expect(check(parse(path, code)).map(show)).toEqual([]);
  });

  test('the layers name no folder twice', () => {
    expect(new Set(LAYERS.flat()).size).toBe(LAYERS.flat().length);
  });
});
