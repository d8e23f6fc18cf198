/**
 * Vite plugin: an imported `*.yaml` under shared/ or scenarios/ becomes an ES module whose default export is its data.
 * The same plugin serves app, worker, command line and tests. Errors name file, line and column and stop the build.
 *
 * A scenario asked for with `?shelf` comes as a shelf tells it: small, and without the answer.
 */
import { relative } from 'node:path';
import type { Plugin } from 'vite';
import { readYaml } from '../schema/readYaml.ts';
import type { ScenarioData } from '../schema/scenario.ts';
import { shelfScenario } from '../schema/shelfScenario.ts';
import { projectFolder } from './folders.ts';
import { jsonModule } from './jsonModule.ts';
import { validate } from './validate.ts';

export function yamlModules(): Plugin {
  return {
    name: 'portside:yaml',
    enforce: 'pre',
    transform: {
      filter: { id: /\.yaml(\?shelf)?$/ },
      handler(text, id) {
        const [path, query] = id.split('?');
        const file = relative(projectFolder, path);
        if (!/^(shared|scenarios)\//.test(file)) return null;
        const source = readYaml(file, text);
        const whole = validate(file, source);
        const data = query === 'shelf' ? shelfScenario(whole as ScenarioData) : whole;
        return jsonModule(data);
      },
    },
  };
}
