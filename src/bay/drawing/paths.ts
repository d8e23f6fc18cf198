/** Outlines as SVG paths, in millimetres. */
import type { PointMm } from '../../layout/layout';
import { mm } from './record';

export function roundRect(x: number, y: number, w: number, h: number, radius = 8): string {
  const r = mm(Math.max(0, Math.min(radius, w / 2, h / 2)));
  const corner = `A${r} ${r} 0 0 1`;
  return (
    `M${mm(x + r)} ${mm(y)}H${mm(x + w - r)}${corner} ${mm(x + w)} ${mm(y + r)}V${mm(y + h - r)}` +
    `${corner} ${mm(x + w - r)} ${mm(y + h)}H${mm(x + r)}${corner} ${mm(x)} ${mm(y + h - r)}V${mm(y + r)}${corner} ${mm(x + r)} ${mm(y)}Z`
  );
}

export const polyline = (points: readonly PointMm[]): string =>
  `M${points.map(([x, y]) => `${mm(x)} ${mm(y)}`).join('L')}`;
export const polygon = (points: readonly PointMm[]): string => `${polyline(points)}Z`;

export const ellipse = (x: number, y: number, rx: number, ry: number): string =>
  `M${mm(x - rx)} ${mm(y)}A${mm(rx)} ${mm(ry)} 0 1 1 ${mm(x + rx)} ${mm(y)}A${mm(rx)} ${mm(ry)} 0 1 1 ${mm(x - rx)} ${mm(y)}Z`;

export const circle = (x: number, y: number, r: number): string => ellipse(x, y, r, r);

/** A square with rounded corners round (x, y); `half` is half its side. */
export const roundSquare = (x: number, y: number, half: number, corner = 0.28): string =>
  roundRect(x - half, y - half, half * 2, half * 2, half * 2 * corner);

/** Arc of an ellipse between two angles in radians, clockwise on screen. */
export function arc(x: number, y: number, rx: number, ry: number, from: number, to: number): string {
  const large = to - from > Math.PI ? 1 : 0;
  return (
    `M${mm(x + Math.cos(from) * rx)} ${mm(y + Math.sin(from) * ry)}` +
    `A${mm(rx)} ${mm(ry)} 0 ${large} 1 ${mm(x + Math.cos(to) * rx)} ${mm(y + Math.sin(to) * ry)}`
  );
}
