/**
 * Where the nodes of the run-time tables lie, so that the cell of a value is read off the bits of a double instead of
 * from a logarithm: an octave (power of two) is cut into equal parts, finer octaves towards the critical point.
 *
 * Pressure: x = p * 2^22 / top, from 2^4 to 2^22 (18 octaves), top = 0.985 of the critical pressure.
 * Superheated vapour: w = 1 + (h - hv(p)) / 20 kJ/kg, from 1 to 16 (4 octaves of 8 parts), finest at the dome.
 * Liquid: even steps of h.
 */

export const TOP_SHARE_OF_CRITICAL = 0.985;
export const LOWEST_OCTAVE = 4;
export const TOP_OCTAVE = 22;
export const TOP_REDUCED = 4194304;
const FINEST_PARTS = 32;
const FINEST_SHIFT = 15;
/** Parts of an octave, from the lowest to the highest. */
const PARTS = [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 8, 8, 16, 16, 32];

export const SUPERHEAT_UNIT_J_PER_KG = 20000;
export const SUPERHEAT_OCTAVES = 4;
export const SUPERHEAT_PARTS = 8;
export const SUPERHEAT_SHIFT = 17;
export const SUPERHEAT_CELLS = SUPERHEAT_OCTAVES * SUPERHEAT_PARTS;
export const LIQUID_CELLS = 128;

/** Reduced pressures of the nodes, exact in binary. */
export const PRESSURE_NODES: Float64Array = pressureNodes();
export const PRESSURE_CELLS = PRESSURE_NODES.length - 1;
/** Cell number by (high word >>> 15) - PRESSURE_MAP_OFFSET. */
export const PRESSURE_MAP: Uint16Array = pressureMap();
export const PRESSURE_MAP_OFFSET = (1023 + LOWEST_OCTAVE) * FINEST_PARTS;
export const PRESSURE_MAP_SHIFT = FINEST_SHIFT;
/** w of the superheat nodes. */
export const SUPERHEAT_NODES: Float64Array = superheatNodes();

function pressureNodes(): Float64Array {
  const nodes: number[] = [];
  let octaveStart = 16;
  for (const parts of PARTS) {
    for (let i = 0; i < parts; i++) nodes.push(octaveStart * (1 + i / parts));
    octaveStart *= 2;
  }
  nodes.push(octaveStart);
  return Float64Array.from(nodes);
}

function pressureMap(): Uint16Array {
  const map = new Uint16Array(PARTS.length * FINEST_PARTS);
  let cell = 0;
  for (let octave = 0; octave < PARTS.length; octave++) {
    for (let i = 0; i < FINEST_PARTS; i++) {
      map[octave * FINEST_PARTS + i] = cell + Math.floor((i * PARTS[octave]) / FINEST_PARTS);
    }
    cell += PARTS[octave];
  }
  return map;
}

function superheatNodes(): Float64Array {
  const nodes = new Float64Array(SUPERHEAT_CELLS + 1);
  for (let octave = 0, start = 1; octave < SUPERHEAT_OCTAVES; octave++, start *= 2) {
    for (let i = 0; i < SUPERHEAT_PARTS; i++) nodes[octave * SUPERHEAT_PARTS + i] = start * (1 + i / SUPERHEAT_PARTS);
  }
  nodes[SUPERHEAT_CELLS] = 16;
  return nodes;
}
