/** The form of a scenario for editors, with all cars there: what `npm run schema` bundles. */
import '../layout/allLayouts';
import '../loop/car/allVehicles';
import '../refrigerant/allFluids';

export { scenarioSchemaText } from './lists/scenarioSchema';
