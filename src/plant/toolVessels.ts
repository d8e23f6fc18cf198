/**
 * Tanks, pots and cells of the tools on a bench, as vessels of the network: one-cell pots at the temperature of the day.
 * Only what lies on the bench is there.
 */
import { CHARGING_TANK } from '../equipment/chargingTank';
import { IDENTIFIER } from '../equipment/identifier';
import { NITROGEN } from '../equipment/nitrogen';
import { RECOVERY, RECOVERY_TANK } from '../equipment/recoveryMachine';
import {
  STRONG_GAS,
  STRONG_GAS_AIR_W_PER_K,
  STRONG_GAS_IDS,
  STRONG_GAS_WALL_J_PER_K,
  type StrongGasId,
} from '../equipment/strongGas';
import type { ToolId } from '../equipment/tools';
import type { Network } from '../loop/network';
import type { Contents, VesselIndex } from '../loop/networkTypes';
import { AIR_J_PER_KG_K, charged, type DayAir } from './benchVessels';

/** -1 where the tool is not on the bench. */
export interface ToolVessels {
  /** Pot at the inlet of the recovery machine, and its tank. */
  readonly separator: VesselIndex;
  readonly recoveryTank: VesselIndex;
  readonly chargingTank: VesselIndex;
  readonly nitrogen: VesselIndex;
  readonly identifier: VesselIndex;
  readonly strong: Readonly<Record<StrongGasId, VesselIndex>>;
}

/** Left in the pot of a machine that has cleared itself, kg. */
const CLEARED_KG = 1e-3;

/** `foreign`: what the bench's tanks hold is not what is in the loop. */
export function addTools(
  network: Network,
  tools: readonly ToolId[],
  day: DayAir,
  foreign: boolean,
  tankHeldKg: number = RECOVERY_TANK.heldKg,
): ToolVessels {
  const { temperatureK } = day;
  const has = (id: ToolId): boolean => tools.includes(id);
  const airKg = (pa: number, m3: number): number => (pa * m3) / (AIR_J_PER_KG_K * temperatureK);
  const strongFill = (id: StrongGasId) => ({
    refrigerantKg: 0,
    airKg: airKg(STRONG_GAS[id].fillPa, STRONG_GAS[id].volumeM3),
  });
  const add = (there: boolean, pot: Pot, held: Omit<Contents, 'temperatureK'>): VesselIndex =>
    there ? addPot(network, pot, { temperatureK, ...held }) : -1;
  return {
    separator: add(has('recovery-machine'), SEPARATOR, charged(CLEARED_KG, foreign)),
    recoveryTank: add(has('recovery-machine'), TANK, charged(tankHeldKg, foreign)),
    chargingTank: add(has('charging-tank'), CHARGING, charged(CHARGING_TANK.netKg, foreign)),
    nitrogen: add(has('nitrogen'), CYLINDER, {
      refrigerantKg: 0,
      airKg: airKg(NITROGEN.fillPa, NITROGEN.volumeM3),
    }),
    strong: Object.fromEntries(
      STRONG_GAS_IDS.map((id) => [id, add(has(id), strongPot(id), strongFill(id))]),
    ) as Record<StrongGasId, VesselIndex>,
    identifier: add(has('identifier'), CELL, {
      refrigerantKg: 0,
      airKg: airKg(day.pressurePa, IDENTIFIER.cellM3),
    }),
  };
}

interface Pot {
  readonly id: string;
  readonly volumeM3: number;
  readonly wallJPerK: number;
  /** Boiling or condensing, vapour, liquid to the wall, W/K. Estimates, no source. */
  readonly insideWPerK: readonly [number, number, number];
  readonly airWPerK: number;
}

const SEPARATOR: Pot = {
  id: 'tool:separator',
  volumeM3: RECOVERY.separatorM3,
  wallJPerK: RECOVERY.separatorWallJPerK,
  insideWPerK: [25, 2, 4],
  airWPerK: RECOVERY.stillWPerK,
};
const TANK: Pot = {
  id: 'tool:recovery-tank',
  volumeM3: RECOVERY_TANK.volumeM3,
  wallJPerK: RECOVERY_TANK.wallJPerK,
  insideWPerK: [80, 8, 30],
  airWPerK: RECOVERY_TANK.stillWPerK,
};
const CHARGING: Pot = {
  id: 'tool:charging-tank',
  volumeM3: CHARGING_TANK.volumeM3,
  wallJPerK: CHARGING_TANK.wallJPerK,
  insideWPerK: [40, 5, 20],
  airWPerK: CHARGING_TANK.airWPerK,
};
const CYLINDER: Pot = {
  id: 'tool:nitrogen',
  volumeM3: NITROGEN.volumeM3,
  wallJPerK: NITROGEN.wallJPerK,
  insideWPerK: [5, 5, 5],
  airWPerK: NITROGEN.airWPerK,
};
const CELL: Pot = {
  id: 'tool:identifier',
  volumeM3: IDENTIFIER.cellM3,
  wallJPerK: IDENTIFIER.wallJPerK,
  insideWPerK: [0.5, 0.2, 0.3],
  airWPerK: IDENTIFIER.airWPerK,
};

const strongPot = (id: StrongGasId): Pot => ({
  id: `tool:${id}`,
  volumeM3: STRONG_GAS[id].volumeM3,
  wallJPerK: STRONG_GAS_WALL_J_PER_K,
  insideWPerK: [5, 5, 5],
  airWPerK: STRONG_GAS_AIR_W_PER_K,
});

function addPot(network: Network, pot: Pot, contents: Contents): VesselIndex {
  const vessel = network.addVessel(
    {
      id: pot.id,
      cells: [
        {
          id: 'body',
          kind: 'pot',
          volumeM3: pot.volumeM3,
          wallHeatCapacityJPerK: pot.wallJPerK,
          insideWPerK: pot.insideWPerK,
          outsideWPerK: pot.airWPerK,
          outletHeight: 1,
        },
      ],
    },
    contents,
  );
  network.setSurroundings(vessel, 0, contents.temperatureK, pot.airWPerK);
  return vessel;
}
