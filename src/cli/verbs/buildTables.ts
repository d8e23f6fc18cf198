/** `build-tables`: makes the run-time property tables again from the published coefficients and writes them in place. */
import { buildTables } from '../../refrigerant/buildTables';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'build-tables',
  summary: 'properties.buildSummary',
  options: {},
  run(_call, io) {
    const files = buildTables();
    for (const { path, text } of files) io.writeFile(path, text);
    io.json({ written: files.map(({ path, text }) => ({ path, bytes: text.length })) });
    return 0;
  },
});
