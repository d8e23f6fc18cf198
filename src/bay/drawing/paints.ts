/**
 * What a shape is filled with: a palette token, or a gradient over the shape's own box. One lamp, upper left, makes
 * five kinds for a material: `lit` (a top face), `across` (an upright cylinder), `down` (a lying one), `front` (the
 * side below a top face) and `dome`. The rest are single-purpose.
 */
export interface Stop {
  readonly at: number;
  readonly ink: string;
  readonly alpha?: number;
}

/** Coordinates are shares of the filled shape's box. */
export type Gradient =
  | {
      readonly kind: 'linear';
      readonly line: readonly [number, number, number, number];
      readonly stops: readonly Stop[];
    }
  | {
      readonly kind: 'radial';
      readonly centre: readonly [number, number];
      readonly radius: number;
      readonly stops: readonly Stop[];
    };

export type Paint = string | Gradient;

const linear = (line: readonly [number, number, number, number], ...stops: Stop[]): Gradient => ({
  kind: 'linear',
  line,
  stops,
});
const at = (share: number, ink: string, alpha?: number): Stop =>
  alpha === undefined ? { at: share, ink } : { at: share, ink, alpha };

const round = (m: string): Stop[] => [
  at(0, `${m}-b`),
  at(0.28, `${m}-a`),
  at(0.62, `${m}-b`),
  at(1, `${m}-c`),
];

export const lit = (m: string): Gradient =>
  linear([0, 0, 1, 1], at(0, `${m}-a`), at(0.62, `${m}-b`), at(1, `${m}-b`));
export const across = (m: string): Gradient => linear([0, 0, 1, 0], ...round(m));
export const down = (m: string): Gradient => linear([0, 0, 0, 1], ...round(m));
export const front = (m: string): Gradient => linear([0, 0, 0, 1], at(0, `${m}-c`), at(1, `${m}-d`));
export const dome = (m: string): Gradient => ({
  kind: 'radial',
  centre: [0.36, 0.32],
  radius: 0.75,
  stops: [at(0, `${m}-h`), at(0.35, `${m}-a`), at(1, `${m}-c`)],
});

/** Hose colours have three steps: the colour, its lit side (-a) and its shade (-d). */
const gear = (m: string): Stop[] => [at(0, m), at(0.3, `${m}-a`), at(0.62, m), at(1, `${m}-d`)];
export const gearAcross = (m: string): Gradient => linear([0, 0, 1, 0], ...gear(m));
export const gearDome = (m: string): Gradient => ({
  kind: 'radial',
  centre: [0.36, 0.32],
  radius: 0.8,
  stops: [at(0, `${m}-a`), at(0.6, m), at(1, `${m}-d`)],
});

export const PANEL = linear([0, 0, 1, 1], at(0, 'paint-a'), at(0.45, 'paint-b'), at(1, 'paint-c'));
export const FENDER_LEFT = linear(
  [0, 0, 1, 0],
  at(0, 'paint-c', 0.75),
  at(0.3, 'paint-b', 0),
  at(0.5, 'paint-h', 0.5),
  at(0.66, 'paint-h', 0.2),
  at(0.86, 'paint-c', 0.1),
  at(1, 'paint-d', 0.5),
);
export const FENDER_RIGHT = linear(
  [0, 0, 1, 0],
  at(0, 'paint-d', 0.35),
  at(0.12, 'paint-h', 0.1),
  at(0.34, 'paint-h', 0.5),
  at(0.5, 'paint-b', 0.05),
  at(1, 'paint-d', 0.75),
);
export const GLASS = linear([0, 0, 0, 1], at(0, 'floor-d'), at(1, 'floor-c'));
export const HOOD_UNDERSIDE = linear([0, 0, 0, 1], at(0, 'paint-d'), at(0.75, 'paint-c'), at(1, 'paint-d'));
export const VIGNETTE = linear([0, 0, 1, 1], at(0, 'shadow', 0), at(0.5, 'shadow', 0), at(1, 'shadow', 0.5));
export const FROST_COAT = linear(
  [0, 0, 1, 0],
  at(0, 'frost', 0.82),
  at(0.3, 'frost', 0.92),
  at(0.62, 'frost', 0.74),
  at(1, 'frost-d', 0.82),
);
export const CAN_WALL = linear(
  [0, 0, 1, 0],
  at(0, 'can-b'),
  at(0.25, 'can-a'),
  at(0.55, 'can-b'),
  at(1, 'mill-d'),
);

/** Warm light from the upper left; `strength` is less in the dark theme. It ends fully clear. */
export const lamp = (strength: number): Gradient => ({
  kind: 'radial',
  centre: [0.3, 0.16],
  radius: 0.85,
  stops: [at(0, 'lamp', strength), at(0.45, 'lamp', 0.05), at(1, 'lamp', 0)],
});
