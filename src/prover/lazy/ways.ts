/**
 * Which hose goes where on this car, as anybody finds it who follows the pipes: the low port and the high one, the hose for
 * each, the usual way to lead it clear of fan, belt and exhaust, and where a can's gas gets in.
 */
import { layoutOf } from '../../layout/layouts';
import { tracePort } from '../../layout/trace';
import type { Scenario } from '../../session/scenario/scenario';

export interface Way {
  readonly hose: 'charging' | 'gauge-low' | 'gauge-high';
  readonly port: string;
  /** Zones, joined as a line has them. */
  readonly route: string;
}

export interface Ways {
  readonly hoses: readonly Way[];
  /** Hose that a can or tank goes on, and the channel of the gauge on the low side; null where no hose is there. */
  readonly inlet: 'charging' | 'utility' | null;
  readonly lowChannel: 'charging-gauge' | 'low-gauge' | null;
}

/** `charges`: the charging hose is on the low side, if there is one; else a gauge is. */
export function waysOf({ data }: Scenario, charges: boolean): Ways {
  const layout = layoutOf(data.vehicle);
  const [hasSet, hasCharging] = (['gauge-set', 'charging'] as const).map((hose) =>
    data.bench.hoses.includes(hose),
  );
  const hasLone = hasCharging && (charges || !hasSet);
  const isHazard = (zone: string): boolean =>
    layout.zones.some(({ id, hazard }) => id === zone && hazard !== undefined);
  const routeOf = (port: string): string =>
    layout.routes.find((route) => route.port === port && !route.through.some(isHazard))?.through.join(',') ??
    '';
  const portOn = (side: 'low' | 'high'): string | undefined =>
    layout.ports.find(({ id }) => tracePort(layout, id).side === side)?.id;
  const way = (hose: Way['hose'], side: 'low' | 'high'): Way[] => {
    const port = portOn(side);
    return port === undefined ? [] : [{ hose, port, route: routeOf(port) }];
  };
  const low = hasLone ? way('charging', 'low') : hasSet ? way('gauge-low', 'low') : [];
  return {
    hoses: [...low, ...(hasSet ? way('gauge-high', 'high') : [])],
    inlet: hasLone ? 'charging' : hasSet ? 'utility' : null,
    lowChannel: hasLone ? 'charging-gauge' : hasSet ? 'low-gauge' : null,
  };
}
