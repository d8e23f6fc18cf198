/** Whatever can be commanded has a door on the page: a form or a button that sends it. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type CommandId, commandSpecs } from '../../src/plant/commandSpecs';

const text = ['src/panels', 'src/app']
  .flatMap((folder) => readdirSync(folder).map((name) => `${folder}/${name}`))
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

test.each(Object.keys(commandSpecs) as CommandId[])('%s can be sent from the page', (id) => {
  expect(text).toMatch(new RegExp(`do: ([^,}]*\\? )?('[a-z-]+' : )?'${id}'`));
});
