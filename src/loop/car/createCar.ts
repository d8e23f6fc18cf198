/** Puts a car together and steps it: controls, air, cabin, bay, then the network. That order is the model's order. */
import { humidityRatio } from '../../air/moistAir';
import { refrigerant } from '../../refrigerant/fluids';
import { createNetwork } from '../createNetwork';
import type { Network } from '../network';
import { assembleLoop, type CarLoop, partNamed } from './assembleLoop';
import { stepCabin } from './cabin';
import type { Car, CarSettings, CarStart } from './car';
import { AT, EDIT_NAMES, EDITS, FRONT_COIL, REAR_COIL } from './carNumbers';
import { stepCoilAir } from './coilAir';
import { coilsOf } from './coils';
import { renewCompressor, stepWear } from './compressorWear';
import { stepCondenserAir } from './condenserAir';
import { stepControls } from './controls';
import { stepEngineBay } from './engineBay';
import { editMeters } from './meterEdits';
import { restSplit } from './restSplit';
import type { VehicleData } from './vehicles';
import { stepVents } from './vents';

const SEA_LEVEL_PA = 101325;
/** Walls take seconds, air less than none: the air side is worked out every so many steps and holds between. */
const AIR_EVERY = 4;
/** Of the coil's conductance, what is left where dirt lets no air through at all [guess]. */
const FINS_UNDER_DIRT = 0.6;
/** A soaked car, over the weather: engine, bay, cabin air, interior, K. */
const SOAKED = { engine: 50, bay: 14, cabin: 24, interior: 28 } as const;

export function createCar(vehicle: VehicleData, start: CarStart): Car {
  const network = createNetwork(refrigerant(start.refrigerant));
  const atmosphere = start.ambientPressurePa ?? SEA_LEVEL_PA;
  network.setRoom(atmosphere, start.ambientK);
  if (start.foreign) network.setForeign(start.foreign.fluid);
  const loop = assembleLoop(network, vehicle, restSplit(vehicle, start));
  const r = network.reserve;
  for (const name of EDIT_NAMES) r[AT[name]] = EDITS[name].sound;
  setWeather(network, start.ambientK, start.relativeHumidity, atmosphere);
  settle(network, loop, vehicle, start);
  const condenser = partNamed(loop.parts, 'condenser');
  const { front, rear } = coilsOf(vehicle, loop);
  const bayParts = loop.parts.filter(({ around }) => around === 'bay');

  return {
    vehicle,
    network,
    loop,
    set: (settings) => applySettings(r, settings),
    setWeather: (ambientK, humidity, pressure) =>
      setWeather(network, ambientK, humidity, pressure ?? r[AT.ambientPressurePa]),
    edit(name, value) {
      r[AT[name]] = value;
      editMeters(network, vehicle, loop);
    },
    number: (name) => r[AT[name]],
    renew(part) {
      if (part === 'compressor') renewCompressor(r);
      if (part === 'compressor' || part === 'clutch') r[AT.clutchFaceK] = r[AT.bayK];
    },
    port(id) {
      const found = loop.ports.find((port) => port.id === id);
      if (!found)
        throw new RangeError(`no port "${id}"; there is ${loop.ports.map((port) => port.id).join(', ')}`);
      return found.port;
    },
    portIds: loop.ports.map(({ id }) => id),
    step(dtS) {
      stepControls(network, vehicle, loop, front.part, dtS);
      stepWear(network, vehicle, loop, dtS);
      if (r[AT.airWait] <= 0) {
        r[AT.airWait] = AIR_EVERY;
        stepCondenserAir(network, vehicle.condenserAir, condenser);
        const dirt = r[AT.coilAirHealth];
        const airShare = dirt * r[AT.filterHealth] * r[AT.blowerHealth];
        stepCoilAir(
          network,
          front,
          airShare,
          FINS_UNDER_DIRT + (1 - FINS_UNDER_DIRT) * dirt,
          AIR_EVERY * dtS,
        );
        if (rear) stepCoilAir(network, rear, 1, 1, AIR_EVERY * dtS);
        stepVents(r);
        stepCabin(r, vehicle.cabin, AIR_EVERY * dtS);
        stepEngineBay(network, bayParts, AIR_EVERY * dtS);
      }
      r[AT.airWait] -= 1;
      network.step(dtS);
      r[AT.elapsedS] += dtS;
    },
  };
}

function setWeather(network: Network, ambientK: number, relativeHumidity: number, pressurePa: number): void {
  const r = network.reserve;
  r[AT.ambientK] = ambientK;
  r[AT.ambientHumidityRatio] = humidityRatio(ambientK, relativeHumidity, pressurePa);
  r[AT.ambientPressurePa] = pressurePa;
  network.setRoom(pressurePa, ambientK, r[AT.ambientHumidityRatio]);
}

function applySettings(r: Float64Array, settings: Partial<CarSettings>): void {
  const { engineRevPerS, airConditioningOn, blowerStep, windowsOpen, recirculated } = settings;
  const { roadSpeedMPerS, sunW, occupants, sprayKgPerS } = settings;
  if (engineRevPerS !== undefined) r[AT.engineRevPerS] = engineRevPerS;
  if (airConditioningOn !== undefined) r[AT.airConditioningOn] = airConditioningOn ? 1 : 0;
  if (blowerStep !== undefined) r[AT.blowerStep] = blowerStep;
  if (settings.rearBlowerStep !== undefined) r[AT.rearBlowerStep] = settings.rearBlowerStep;
  if (windowsOpen !== undefined) r[AT.windowsOpen] = windowsOpen ? 1 : 0;
  if (settings.heaterShare !== undefined) r[AT.heaterShare] = settings.heaterShare;
  if (recirculated !== undefined) r[AT.recirculated] = recirculated ? 1 : 0;
  if (roadSpeedMPerS !== undefined) r[AT.roadSpeedMPerS] = roadSpeedMPerS;
  if (sunW !== undefined) r[AT.sunW] = sunW;
  if (occupants !== undefined) r[AT.occupants] = occupants;
  if (settings.highCutOut !== undefined) r[AT.highCutOut] = settings.highCutOut ? 1 : 0;
  if (settings.lowBridged !== undefined) r[AT.lowBridged] = settings.lowBridged ? 1 : 0;
  if (settings.highBridged !== undefined) r[AT.highBridged] = settings.highBridged ? 1 : 0;
  if (settings.fanCalled !== undefined) r[AT.fanCalled] = settings.fanCalled ? 1 : 0;
  if (sprayKgPerS !== undefined) r[AT.sprayKgPerS] = sprayKgPerS;
}

/** Temperatures and switches as they are after standing. */
function settle(network: Network, loop: CarLoop, vehicle: VehicleData, start: CarStart): void {
  const r = network.reserve;
  const soaked = start.stood === 'soaked' ? 1 : 0;
  const ambient = start.ambientK;
  r[AT.engineK] = ambient + soaked * SOAKED.engine;
  r[AT.bayK] = ambient + soaked * SOAKED.bay;
  r[AT.cabinK] = ambient + soaked * SOAKED.cabin;
  r[AT.interiorK] = ambient + soaked * SOAKED.interior;
  r[AT.cabinRatio] = r[AT.ambientHumidityRatio];
  for (const at of [FRONT_COIL, REAR_COIL]) {
    r[at.inletK] = r[at.outletK] = r[AT.cabinK];
    r[at.inletRatio] = r[at.outletRatio] = r[AT.ambientHumidityRatio];
  }
  r[AT.ventK] = r[AT.rearVentK] = r[AT.cabinK];
  r[AT.condenserInletK] = r[AT.condenserOutletK] = ambient;
  r[AT.feltFinK] = r[AT.controlCoilK] = r[AT.cabinK];
  r[AT.clutchFaceK] = r[AT.feltThermalK] = r[AT.bayK];
  r[AT.strokeShare] = 1;
  const felt = vehicle.switches.low.at === 'high' ? loop.high : loop.low;
  r[AT.feltLowPa] = network.pressurePa(felt) - r[AT.ambientPressurePa];
  r[AT.lowSwitch] = r[AT.feltLowPa] > vehicle.switches.low.closes ? 1 : 0;
  r[AT.highCutOut] = vehicle.switches.high.fitted ? 1 : 0;
  r[AT.highSwitch] = r[AT.finSwitch] = r[AT.thermalSwitch] = 1;
  if (soaked === 0) return;
  for (const part of loop.parts) {
    const wall =
      part.around === 'evaporator-air' ? r[AT.cabinK] : part.around === 'bay' ? r[AT.bayK] : ambient;
    for (let i = 0; i < part.cells; i++) network.setWall(part.vessel, part.firstCell + i, wall);
  }
}
