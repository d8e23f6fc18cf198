/** Holds every car at once: for the command line and the tests, which ask for any of them. */
import type { VehicleData } from '../../../shared/schema/vehicle';
import { keepVehicle } from './vehicles';

const files = import.meta.glob<VehicleData>(
  ['../../../shared/vehicles/*.yaml', '!../../../shared/vehicles/*.layout.yaml'],
  { eager: true, import: 'default' },
);

for (const vehicle of Object.values(files)) keepVehicle(vehicle);
