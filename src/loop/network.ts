/**
 * A network of vessels and links, stepped together. A vessel has one pressure and one or more cells; a link carries kg
 * and J of each species from one port to another. One integrator books both ends, so nothing is made or lost.
 *
 * All numbers stand in one Float64Array: a snapshot is a copy of it and of the structure, which is small.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { ForeignId } from './foreign';
import type { MeterName } from './meterNumbers';
import type {
  Contents,
  LinkIndex,
  LinkSpec,
  NetworkStructure,
  Port,
  Species,
  VesselIndex,
  VesselSpec,
} from './networkTypes';

/** Conservation since the network was made, over everything in it and what crossed its border. */
export interface NetworkBooks {
  /** kg held now by all vessels, room excluded, dissolved in oil included. */
  readonly heldKg: Readonly<Record<Species, number>>;
  /** kg that went to the room less what came from it. */
  readonly ventedKg: Readonly<Record<Species, number>>;
  /** |held + vented - brought in| over all that was brought in, taken away or vented, summed without sign, by species. */
  readonly massErrors: Readonly<Record<Species, number>>;
  /** The worst of them. */
  readonly massErrorRelative: number;
  readonly storedJ: number;
  readonly heatInJ: number;
  readonly workInJ: number;
  /** Heat given to the surroundings, what was taken from them not subtracted. */
  readonly heatRejectedJ: number;
  /** Heat through walls, heat given, work and enthalpy vented, each summed without sign. */
  readonly turnedOverJ: number;
  /** |stored + vented - brought in - heat - work| over what turned over, or what warms walls and contents by 1 K if more. */
  readonly energyErrorRelative: number;
  /** Steps of a vessel whose pressure was not found within the rounds there are. */
  readonly unsolvedSteps: number;
}

export interface Network {
  /** Every number that changes; a snapshot is a copy of it with `structure()`. */
  readonly state: Float64Array;
  /** The loop's own fluid: what `refrigerant` means. */
  readonly refrigerantId: RefrigerantId;
  /** A part of `state` free for whoever builds on the network (air side, cabin, controls). */
  readonly reserve: Float64Array;
  structure(): NetworkStructure;
  /** Brings back exactly what was: structure in the same slots, and every number. */
  restore(structure: NetworkStructure, state: Float64Array): void;
  /** Only the structure; numbers stay as they are. */
  rebuild(structure: NetworkStructure): void;
  stateHash(): string;

  // Edits. Slots are reused after removal, lowest first.
  addVessel(spec: VesselSpec, contents: Contents): VesselIndex;
  /** Removes it with its links; what it held leaves the books as taken away (not vented). */
  removeVessel(vessel: VesselIndex): void;
  /**
   * Air, water, oil or sealant from outside (negative: taken away); kg that came. Carries no energy. Oil comes to and from
   * the walls, or the compressor's sump.
   */
  bringIn(
    vessel: VesselIndex,
    species: Exclude<Species, 'refrigerant' | 'foreign'>,
    kg: number,
    oilAt?: 'walls' | 'sump',
  ): number;
  addLink(spec: LinkSpec): LinkIndex;
  removeLink(link: LinkIndex): void;
  /** -1 when there is none. */
  vesselNamed(id: string): VesselIndex;
  linkNamed(id: string): LinkIndex;
  cellNamed(vessel: VesselIndex, id: string): number;

  // Settings, all in `state`.
  /** `humidityRatio`: kg of water in a kg of the room's dry air; none if it is left out. */
  setRoom(pressurePa: number, temperatureK: number, humidityRatio?: number): void;
  /** The one fluid that `foreign` means, in every vessel. */
  setForeign(fluid: ForeignId): void;
  /** A desiccant renewed: what it can hold, and what it holds already; the water in the old one leaves the books with it. */
  renewDesiccant(vessel: VesselIndex, capacityKg: number, heldKg: number): void;
  /** 0 shut .. 1 open. */
  setOpening(link: LinkIndex, opening: number): void;
  /** Metering devices only: what stands before the device and what is left of it. */
  setMeter(link: LinkIndex, name: MeterName, value: number): void;
  /** Compressor only, revolutions a second; 0 stands. */
  setSpeed(link: LinkIndex, revPerS: number): void;
  /** Compressor only: share of its full stroke, 0..1. */
  setStroke(link: LinkIndex, share: number): void;
  /** Compressor only: leak through the reeds over their own, kg/s per pascal. */
  setReedLeak(link: LinkIndex, kgPerSPa: number): void;
  /** Compressor only: heat that rubbing at its shaft puts into its body, W; enters the books as work. */
  setShaftHeat(link: LinkIndex, heatW: number): void;
  /** Temperature around a cell's wall and conductance to it. */
  setSurroundings(vessel: VesselIndex, cell: number, temperatureK: number, conductanceWPerK: number): void;
  /** Heat put into a cell's wall from outside besides that, W (a hand, the sun, a bath's heater). */
  setHeat(vessel: VesselIndex, cell: number, heatW: number): void;
  /** Brings a cell's wall to a temperature at once; enters the books as heat. */
  setWall(vessel: VesselIndex, cell: number, temperatureK: number): void;
  /** Degrees from upright: 0 upright, 180 upside down. Pots only. */
  setTilt(vessel: VesselIndex, degrees: number): void;
  /** 0 still .. 1 shaken hard: liquid comes with the vapour, and the wall is wetted. */
  setShaking(vessel: VesselIndex, share: number): void;

  /** One step of the whole network; 0.02 s everywhere but in tests of the integrator. */
  step(dtS: number): void;

  // Readings of the truth.
  vesselSlots(): readonly VesselIndex[];
  linkSlots(): readonly LinkIndex[];
  cellCount(vessel: VesselIndex): number;
  /** Total pressure, air included: what a gauge feels. */
  pressurePa(vessel: VesselIndex): number;
  refrigerantPressurePa(vessel: VesselIndex): number;
  /** Of air and water vapour together. */
  airPressurePa(vessel: VesselIndex): number;
  massKg(vessel: VesselIndex, species: Species): number;
  /** Refrigerant and foreign fluid together. */
  chargeKg(vessel: VesselIndex): number;
  /** Everything in it but air: what a scale feels over the empty vessel. */
  contentKg(vessel: VesselIndex): number;
  /** null where no foreign fluid has been named. */
  foreign(): ForeignId | null;
  /** Of the oil, what is in the compressor at the end of the vessel. */
  sumpOilKg(vessel: VesselIndex): number;
  /** mg of water that goes with a kg of its refrigerant, dissolved or free; what a desiccant holds is not in it. */
  waterMgPerKg(vessel: VesselIndex): number;
  /** Water that its desiccant holds, and could hold, kg. */
  adsorbedKg(vessel: VesselIndex): number;
  desiccantKg(vessel: VesselIndex): number;
  cellMassKg(vessel: VesselIndex, cell: number): number;
  temperatureK(vessel: VesselIndex, cell: number): number;
  enthalpyJPerKg(vessel: VesselIndex, cell: number): number;
  /** Below 0 subcooled, above 1 superheated. */
  quality(vessel: VesselIndex, cell: number): number;
  /** Of the refrigerant at its own (partial) pressure. */
  saturationTemperatureK(vessel: VesselIndex): number;
  wallTemperatureK(vessel: VesselIndex, cell: number): number;
  /** Share of the cell's volume that is liquid, 0..1. */
  liquidShare(vessel: VesselIndex, cell: number): number;
  /** Refrigerant that went from `from` to `to` in the last step, kg/s. */
  massFlowKgPerS(link: LinkIndex): number;
  /** Liquid that went that way, kg/s. */
  liquidFlowKgPerS(link: LinkIndex): number;
  /** Shaft work of a compressor, W, friction included. */
  workW(link: LinkIndex): number;
  /** Oil that went to the room along with it in the last step, kg. */
  oilVentedKg(link: LinkIndex): number;
  /** A link's own memory: expansion valve 0 bulb K, 1 lift; compressor 0 liquid taken in, kg, 1 drawn in, kg/s; relief 0 open. */
  linkMemory(link: LinkIndex, index: 0 | 1 | 2): number;
  /** Of a metering device: what faults left of it, the line before it, its bulb, the ice in it. */
  meter(link: LinkIndex, name: MeterName): number;
  /** Enthalpy of what would leave the vessel here now, J/kg. */
  portEnthalpyJPerKg(port: Port): number;
  /** kg that went to the room less what came from it, as in the books, and cheap. */
  ventedKg(species: Species): number;
  books(): NetworkBooks;
}
