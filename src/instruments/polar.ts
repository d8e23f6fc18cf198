/**
 * Points and arcs of round instruments, in the user units of their SVG. Angles in degrees, 0 to the right, clockwise
 * (as the y axis of SVG points down). Numbers are rounded to a tenth, so markup stays short and pictures are stable.
 */
export interface Centre {
  readonly x: number;
  readonly y: number;
}

const DEGREE = Math.PI / 180;
const tenth = (value: number): number => Math.round(value * 10) / 10;

export function polarPoint(centre: Centre, radius: number, angleDeg: number): readonly [number, number] {
  return [
    tenth(centre.x + radius * Math.cos(angleDeg * DEGREE)),
    tenth(centre.y + radius * Math.sin(angleDeg * DEGREE)),
  ];
}

/** Path of the arc from `fromDeg` clockwise to `toDeg`. */
export function arcPath(centre: Centre, radius: number, fromDeg: number, toDeg: number): string {
  const large = toDeg - fromDeg > 180 ? 1 : 0;
  return `M${polarPoint(centre, radius, fromDeg)}A${radius} ${radius} 0 ${large} 1 ${polarPoint(centre, radius, toDeg)}`;
}

/** Path of a straight stroke along one angle. */
export function radialPath(centre: Centre, fromRadius: number, toRadius: number, angleDeg: number): string {
  return `M${polarPoint(centre, fromRadius, angleDeg)}L${polarPoint(centre, toRadius, angleDeg)}`;
}
