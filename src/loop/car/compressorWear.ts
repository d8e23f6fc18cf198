/**
 * Damage to the compressor, by cause, as shares of what ends in seizure. While it turns each grows by
 *
 *   slugging  liquid over a fifth of the flow fills a bucket that boils off at 3 g/s, running or standing; from 150 to
 *             350 g each kg adds 1/4, the slug; what runs over the full bucket 1/10, the flood that washes off its oil
 *   heat      body or discharge gas over 428 K (155 degC): each K s adds 1/6000
 *   dry       its oil under a quarter of its fill: each s adds 1/1800
 *   vacuum    suction under the atmosphere for over two minutes on end: each further s adds 1/7200
 *
 * Two minutes: a compressor is never run longer below atmospheric pressure (service text). All other numbers [guess], set
 * so that a sound car gathers none: the most that collects is 70 g, on a restart in the cold; a car with a tube that cycles
 * on a mild day brings 2.3 g/s. The share that is harmless is of what the cylinders draw. Worn by w it pumps 1 - 0.5 w, its
 * reeds leak 6e-9 w kg/s per Pa more, and at 1 it seizes. A new compressor begins again.
 */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT, type CarNumber } from './carNumbers';
import { compressorOilKg } from './compressorOilKg';
import { hottestK } from './thermalProtection';
import type { VehicleData } from './vehicles';

export const WEAR_CAUSES = ['slug', 'heat', 'dry', 'vacuum'] as const;
export type WearCause = (typeof WEAR_CAUSES)[number];
export const WEAR_OF = {
  slug: 'wearSlug',
  heat: 'wearHeat',
  dry: 'wearDry',
  vacuum: 'wearVacuum',
} as const satisfies Record<WearCause, CarNumber>;

const HARMLESS_LIQUID_SHARE = 0.2;
const BOILS_OFF_KG_PER_S = 0.003;
const TOLERATED_SLUG_KG = 0.15;
const SLUG_ENDS_KG = 0.35;
const PER_SLUG_KG = 0.25;
const PER_FLOOD_KG = 0.1;
const TOO_HOT_K = 428;
const PER_KELVIN_S = 1 / 6000;
const LEAST_OIL_SHARE = 0.25;
const PER_DRY_S = 1 / 1800;
const VACUUM_GRACE_S = 120;
const PER_VACUUM_S = 1 / 7200;
const PUMPING_LOST = 0.5;
const REEDS_LEAK_KG_PER_S_PA = 6e-9;

/** 0 as new .. 1 seized. */
export function wearOf(r: Float64Array): number {
  return Math.min(1, r[AT.wearSlug] + r[AT.wearHeat] + r[AT.wearDry] + r[AT.wearVacuum]);
}

export function isSeized(r: Float64Array): boolean {
  return r[AT.wearSlug] + r[AT.wearHeat] + r[AT.wearDry] + r[AT.wearVacuum] >= 1;
}

/** Damage of a step, then what faults and damage together leave of pumping and reeds. */
export function stepWear(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  if (r[AT.compressorRevPerS] > 0) {
    wearSlug(network, loop, dtS);
    const over = hottestK(network, loop) - TOO_HOT_K;
    if (over > 0) r[AT.wearHeat] += PER_KELVIN_S * over * dtS;
    wearDry(network, vehicle, loop, dtS);
    wearVacuum(network, loop, dtS);
  } else {
    r[AT.slugKg] = Math.max(0, r[AT.slugKg] - BOILS_OFF_KG_PER_S * dtS);
    r[AT.sluggingKgPerS] = r[AT.vacuumS] = 0;
  }
  const wear = wearOf(r);
  network.setOpening(loop.compressor, r[AT.pumpingHealth] * (1 - PUMPING_LOST * wear));
  network.setReedLeak(loop.compressor, r[AT.reedLeakKgPerSPa] + REEDS_LEAK_KG_PER_S_PA * wear);
}

/** A new compressor. */
export function renewCompressor(r: Float64Array): void {
  r[AT.wearSlug] = r[AT.wearHeat] = r[AT.wearDry] = r[AT.wearVacuum] = 0;
  r[AT.slugKg] = r[AT.sluggingKgPerS] = r[AT.vacuumS] = r[AT.dryS] = 0;
}

function wearSlug(network: Network, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  const liquid = network.liquidFlowKgPerS(loop.compressor);
  const harmful = Math.max(0, liquid - HARMLESS_LIQUID_SHARE * network.linkMemory(loop.compressor, 1));
  r[AT.sluggingKgPerS] = harmful;
  r[AT.sluggedKg] += harmful * dtS;
  const before = r[AT.slugKg];
  const came = before + (harmful - BOILS_OFF_KG_PER_S) * dtS;
  const now = Math.min(SLUG_ENDS_KG, Math.max(0, came));
  r[AT.slugKg] = now;
  const slug = now - Math.max(before, TOLERATED_SLUG_KG);
  if (slug > 0) r[AT.wearSlug] += PER_SLUG_KG * slug;
  if (came > now) r[AT.wearSlug] += PER_FLOOD_KG * (came - now);
}

function wearDry(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  if (compressorOilKg(network, loop) >= LEAST_OIL_SHARE * vehicle.compressor.oil) return;
  r[AT.dryS] += dtS;
  r[AT.wearDry] += PER_DRY_S * dtS;
}

function wearVacuum(network: Network, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  r[AT.vacuumS] = network.pressurePa(loop.low) < r[AT.ambientPressurePa] ? r[AT.vacuumS] + dtS : 0;
  if (r[AT.vacuumS] > VACUUM_GRACE_S) r[AT.wearVacuum] += PER_VACUUM_S * dtS;
}
