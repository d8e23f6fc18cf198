/**
 * Which check a YAML file of the project has to pass when it is built, by folder. A check takes the source with its
 * positions and returns the data to ship; it throws `YamlError` with `source.at(path)` in front of what was wrong.
 */

import { jurisdictionSchema } from '../schema/jurisdiction.ts';
import { checkLayout } from '../schema/layout.ts';
import { checkedData } from '../schema/problems.ts';
import type { YamlSource } from '../schema/readYaml.ts';
import { rubricSchema } from '../schema/rubric.ts';
import { scenarioSchema } from '../schema/scenario.ts';
import { checkVehicle } from '../schema/vehicle.ts';
import { checkWords } from '../schema/words.ts';
import { drawingSizes } from './parts/partDrawings.ts';

type Check = (source: YamlSource) => unknown;

const CHECKS: readonly { readonly files: RegExp; readonly check: Check }[] = [
  { files: /^shared\/words\/[a-z]{2}\/[a-z][a-zA-Z]*\.yaml$/, check: checkWords },
  { files: /^shared\/vehicles\/[a-z][a-z0-9-]*\.yaml$/, check: checkVehicle },
  {
    files: /^shared\/vehicles\/[a-z][a-z0-9-]*\.layout\.yaml$/,
    check: (source) => checkLayout(source, drawingSizes()),
  },
  { files: /^shared\/rubrics\/[a-z][a-zA-Z]*\.yaml$/, check: (source) => checkedData(source, rubricSchema) },
  {
    files: /^shared\/jurisdictions\/[a-z][a-z-]*\.yaml$/,
    check: (source) => checkedData(source, jurisdictionSchema),
  },
  { files: /^scenarios\/[a-z][a-z0-9-]*\.yaml$/, check: (source) => checkedData(source, scenarioSchema) },
];

/** `file` is relative to the project. A file that no check claims passes as it is. */
export function validate(file: string, source: YamlSource): unknown {
  const rule = CHECKS.find(({ files }) => files.test(file));
  return rule ? rule.check(source) : source.data;
}
