/**
 * Which part of the bay fills the host, in CSS pixels. The whole frame of the layout covers the host and is cut from
 * the right only: mat, hoses, ports, loop and fans stay, what falls out is the far fender. A tall host would lose a port
 * on the right: there the picture is as wide as it takes to have them all. Nearer steps centre on the ports; "whole" shows
 * the frame with nothing cut.
 */
import type { Layout, PointMm } from '../layout/layout';
import type { ZoomStep } from './bayApi';

export interface HostSize {
  readonly width: number;
  readonly height: number;
}

export interface Camera {
  /** CSS pixels per millimetre. */
  readonly scale: number;
  /** Millimetre point at the host's top left. */
  readonly x: number;
  readonly y: number;
}

/** Steps over the covering scale; the first stands for "whole". */
const LEVELS = [0, 1, 1.6, 2.4, 3.4] as const;
export const COVER_LEVEL = 1;
/** Hosts narrower than this open one step nearer, on the ports. */
const PHONE_WIDTH = 480;
/** Right of the last port there is room for a coupler and a finger. */
const PORT_ROOM_MM = 60;
/** How far past the frame the drawing may be moved: it is drawn at least this far. */
const PAST_MM = 280;

export const openingLevel = (size: HostSize): number =>
  size.width < PHONE_WIDTH ? COVER_LEVEL + 1 : COVER_LEVEL;

export function levelAfter(level: number, step: ZoomStep): number {
  if (step === 'whole') return 0;
  return Math.max(0, Math.min(LEVELS.length - 1, level + (step === 'nearer' ? 1 : -1)));
}

/** The step whose scale is nearest to one, by ratio: what two fingers leave the picture at. */
export function levelNear(layout: Layout, size: HostSize, scale: number): number {
  const away = (level: number): number =>
    Math.abs(Math.log(cameraFor(layout, size, level, null).scale / scale));
  return LEVELS.reduce<number>((best, _, level) => (away(level) < away(best) ? level : best), 0);
}

export function cameraFor(layout: Layout, size: HostSize, level: number, centre: PointMm | null): Camera {
  const [vx, vy, vw, vh] = layout.view;
  const cover = Math.max(size.width / vw, size.height / vh);
  const whole = Math.min(size.width / vw, size.height / vh);
  if (level === 0) {
    return { scale: whole, x: vx - (size.width / whole - vw) / 2, y: vy - (size.height / whole - vh) / 2 };
  }
  const allPorts = size.width / (Math.max(...layout.ports.map(({ at }) => at[0])) + PORT_ROOM_MM - vx);
  const scale = level === COVER_LEVEL ? Math.max(whole, Math.min(cover, allPorts)) : cover * LEVELS[level];
  const [w, h] = [size.width / scale, size.height / scale];
  if (level === COVER_LEVEL && centre === null) return { scale, x: vx, y: vy + (vh - h) / 2 };
  const [cx, cy] = centre ?? portsCentre(layout);
  return {
    scale,
    x: held(cx - w / 2, vx - 20, vx + vw - w + PAST_MM / 4),
    y: held(cy - h / 2, vy, vy + vh - h),
  };
}

/** The middle of the ports, a little toward the mat. */
export function portsCentre(layout: Layout): PointMm {
  const n = layout.ports.length;
  const x = layout.ports.reduce((sum, port) => sum + port.at[0], 0) / n;
  const y = layout.ports.reduce((sum, port) => sum + port.at[1], 0) / n;
  return [x, y];
}

const held = (value: number, least: number, most: number): number =>
  Math.max(least, Math.min(Math.max(least, most), value));

export const toScreen = (camera: Camera, [x, y]: PointMm): PointMm => [
  (x - camera.x) * camera.scale,
  (y - camera.y) * camera.scale,
];
export const toBay = (camera: Camera, [x, y]: PointMm): PointMm => [
  x / camera.scale + camera.x,
  y / camera.scale + camera.y,
];
