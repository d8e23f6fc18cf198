/**
 * The door of the bay: `createBay` (bayView.ts) makes a `BayView`; the page feeds it frames and gets intents back.
 * The bay decides nothing. An intent that is refused needs no answer: the next frame simply shows what is.
 */
import type { CoupledHose, Layout } from '../layout/layout';
import type { BayFrame } from './bayFrame';

export type BayTheme = 'light' | 'dark' | 'projector';
export type ZoomStep = 'nearer' | 'farther' | 'whole';

export interface BayCallbacks {
  /** A thing was pressed: a port, a cap ("cap:port-a"), a coupler ("coupler:low"), a part, the can. */
  onPick(targetId: string): void;
  /**
   * A thing was put down: item, place (a port, "mat" or "scale") and, for a coupler, the zones its hose lies in from
   * the port to the gauge edge. A coupler let go over a fitting it does not match is reported too, then falls.
   * False where nothing came of it yet: the thing falls until a frame says otherwise.
   */
  onDrop(itemId: string, targetId: string, routeZones: readonly string[]): boolean;
  /** The valve of a coupler was asked for by its key: open or shut it. */
  onCoupler(hose: CoupledHose): void;
  /** The can was turned: 0..180 in steps of 5. */
  onTilt(degrees: number): void;
  /** The can's valve was turned: 0..16 sixteenths of a turn. */
  onValve(sixteenths: number): void;
  /** The can in the hand was shaken. */
  onShake(): void;
  /** Look closer at a part, line or port. */
  onLook(partId: string): void;
  /** Where the item may go now; asked when it is picked up. */
  validTargets(itemId: string): readonly string[];
}

export interface BayView {
  update(frame: BayFrame): void;
  /** The page around it changes in the next picture of the screen, and may want all of it. */
  leaveOne(): void;
  /** Tell it the host's size changed; it also watches by itself. */
  resize(): void;
  setTheme(theme: BayTheme): void;
  zoom(step: ZoomStep): void;
  /** The look-closer picture of a port, part or line in CSS pixels; null for an id that is nothing here. */
  closeUp(targetId: string, width: number, height: number): HTMLCanvasElement | null;
  /** Moves keyboard focus to an id (a port, part, coupler…), if it is there. */
  focus(targetId: string): void;
  dispose(): void;
}

export interface BayOptions {
  /** Stills instead of motion. Follows the system's setting where absent. */
  readonly reducedMotion?: boolean;
}

export type CreateBay = (
  host: HTMLElement,
  layout: Layout,
  theme: BayTheme,
  callbacks: BayCallbacks,
  options?: BayOptions,
) => Promise<BayView>;
