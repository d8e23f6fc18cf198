/**
 * Where everything lies in a vehicle's bay: the shape of `shared/vehicles/*.layout.yaml`.
 *
 * Lengths are millimetres of the car seen from above by a reader at the bumper: x to picture right (the car's left),
 * y toward the front. Lines name their ends in flow order; nothing here says which side a port belongs to, that
 * follows from the line or vessel it sits on.
 */
export type PointMm = readonly [x: number, y: number];
/** Left, top, width, height in mm. */
export type RectMm = readonly [x: number, y: number, w: number, h: number];
/** A way-point; a third number is its own fillet radius in mm. */
export type WayPoint = readonly [x: number, y: number] | readonly [x: number, y: number, fillet: number];

export interface Shell {
  /** Fender lips. */
  readonly left: number;
  readonly right: number;
  readonly firewall: number;
  readonly nose: number;
  /** Top edge of the radiator support beam. */
  readonly beam: number;
  readonly grille: number;
  readonly lower: number;
  readonly bumper: number;
  /** Corner radius of the opening at the nose. */
  readonly round: number;
  readonly hold: 'rod' | 'struts';
}

export interface Part {
  readonly id: string;
  /** What it is, and which drawing it wears. */
  readonly kind: string;
  /** A variant of that drawing: the file `KIND-DRAWING` instead of `KIND`. */
  readonly drawing?: string;
  /** Key of its name among the words; a part without one is scenery and cannot be picked. */
  readonly name?: string;
  readonly at: PointMm;
  readonly z: number;
  /** How large it is where that is not the size it is drawn in (w, h, r, d), in mm, and how far turned (turnDeg). */
  readonly size?: Readonly<Record<string, number>>;
  /** Pulleys, where the part is a belt drive. */
  readonly wheels?: readonly (readonly number[])[];
  /** Where a pointer finds it; every named part has one. */
  readonly hit?: RectMm;
}

/** `cable`: orange, high voltage. */
export type SectionMaterial = 'tube' | 'hose' | 'rubber' | 'iron' | 'cable';
export type Section = readonly [material: SectionMaterial, from: number, to: number];

export interface Line {
  readonly id: string;
  /** Parts at its ends, in flow order: present on refrigerant lines only. */
  readonly from?: string;
  readonly to?: string;
  /** True outside diameter. */
  readonly diameterMm: number;
  readonly z: number;
  /** Height over what lies below, for the shadow. */
  readonly lift: number;
  readonly fillet: number;
  readonly overBeam?: boolean;
  readonly way: readonly WayPoint[];
  /** Stretches of tube or hose as shares of the length; all tube where absent. */
  readonly sections?: readonly Section[];
  readonly clamps?: readonly number[];
  readonly nuts?: readonly number[];
  readonly bands?: readonly number[];
  /** Parts inside the line, such as an orifice tube. */
  readonly holds?: readonly string[];
  readonly skin?: 'duct' | 'loom';
  readonly ends?: 'round';
}

/** As built: threads of 3/8 and 7/16 in (R-12), snap-on rings of 13 and 16 mm (R-134a), 14 and 17 mm (R-1234yf). */
export type BoreMm = 9.5 | 11 | 13 | 14 | 16 | 17;

/** A panel over a port, lifted off before anybody gets at its cap. */
export interface PortCover {
  readonly rect: RectMm;
}

export interface Port {
  readonly id: string;
  /** Across the fitting the car was built with: all that tells its two kinds apart by eye. */
  readonly boreMm: BoreMm;
  readonly at: PointMm;
  readonly on: { readonly line: string } | { readonly part: string };
  /** Stands on a milled block of its own. */
  readonly stub?: boolean;
  readonly cover?: PortCover;
}

export type Hazard = 'fan' | 'belt' | 'heat';

export interface Zone {
  readonly id: string;
  readonly rect: RectMm;
  /** Why a hose must not lie here; absent where it may. */
  readonly hazard?: Hazard;
  /** The part that makes it dangerous. */
  readonly part?: string;
}

/** A way to lead a hose from a port to the gauge edge, as zones in order. */
export interface HoseRoute {
  readonly id: string;
  readonly port: string;
  readonly through: readonly string[];
  /** Points it goes by, where the zones alone would lead it through one more. */
  readonly way?: readonly PointMm[];
}

/** The gauge set's three hoses, and the charging hose with a gauge of its own. */
export type HoseId = 'low' | 'high' | 'charging' | 'utility';
/** Hoses that end in a coupler; the utility hose ends in a nut for a can's tap. */
export type CoupledHose = Exclude<HoseId, 'utility'>;

export interface Mat {
  readonly side: 'left' | 'right';
  readonly rect: RectMm;
  readonly canAt: PointMm;
  /** Where each loose end lies. */
  readonly rest: Readonly<Record<HoseId, PointMm>>;
}

export interface Layout {
  readonly id: string;
  readonly view: RectMm;
  readonly paint: string;
  readonly body: 'hatch' | 'sedan' | 'pickup' | 'van' | 'compact' | 'electric';
  /** Drawn diameter over true diameter, the same for every refrigerant line. */
  readonly pipeScale: number;
  readonly shell: Shell;
  readonly parts: readonly Part[];
  readonly lines: readonly Line[];
  readonly ports: readonly Port[];
  readonly zones: readonly Zone[];
  readonly routes: readonly HoseRoute[];
  readonly mat: Mat;
  /** Where hoses leave the picture for their gauges: one x, a y for each. */
  readonly edge: { readonly x: number } & Readonly<Record<HoseId, number>>;
}
