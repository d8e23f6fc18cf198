/** Vehicles with what their label says, and their ports by fitting; which side a port is on follows from where it sits. */
import { layoutOf } from '../../layout/layouts';
import { tracePort } from '../../layout/trace';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { nameOfVehicle } from './nameOfVehicle';

export const listVehicles = () =>
  vehicleIds.map((id) => {
    const { label, metering, year } = vehicleOf(id);
    return {
      id,
      title: nameOfVehicle(id),
      year,
      refrigerant: label.refrigerant,
      chargeKg: label.charge,
      toleranceKg: label.tolerance,
      oil: label.oil,
      metering: metering.kind,
    };
  });

export const listPorts = () =>
  vehicleIds.flatMap((vehicle) => {
    const layout = layoutOf(vehicle);
    return layout.ports.map(({ id, boreMm, on }) => ({
      vehicle,
      id,
      boreMm,
      on,
      side: tracePort(layout, id).side,
    }));
  });
