/** What a search for leaks has under way and what it showed last, and what stands open; part of the desk. */
import { DYE_CARTRIDGE_ML } from '../equipment/soapAndDye';

export interface Sweep {
  at: string;
  from: 'above' | 'below';
  paceMmPerS: number;
  gapMm: number;
  /** Step at which the probe has been all the way round. */
  untilStep: number;
}

export interface SearchDesk {
  hoodOpen: boolean;
  /** Places of the loop whose joints are undone. */
  opened: string[];
  sweep: Sweep | null;
  soap: { at: string; untilStep: number } | null;
  /** What was heard and seen last, 0 nothing .. 8. */
  ticks: number;
  bubbles: number;
  glow: number;
  /** Whether each has shown something, be it nothing, since it was last put to a place. */
  shown: { detector: boolean; soap: boolean; lamp: boolean };
  /** Dye left in its cartridge. */
  dyeMl: number;
}

export const freshSearch = (): SearchDesk => ({
  hoodOpen: true,
  opened: [],
  sweep: null,
  soap: null,
  ticks: 0,
  bubbles: 0,
  glow: 0,
  shown: { detector: false, soap: false, lamp: false },
  dyeMl: DYE_CARTRIDGE_ML,
});
