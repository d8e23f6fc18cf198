/** A line of the bay: shadow, the pill under it where it crosses another, its sections, collars, nuts, bands, clamps. */
import { type Station, stationAt } from '../../layout/course';
import type { SectionMaterial } from '../../layout/layout';
import { down } from './paints';
import { roundRect } from './paths';
import { type Drawing, fill, mm, placed, ROUND, shape, stroke } from './record';
import { HOSE_FACTOR, hasHose, pathOf, type Run, sectionsOf } from './run';
import { bolt, lineShadow } from './solids';
import { alongFrame, collar, hexNut, tube } from './tubes';

const MATERIAL: Readonly<Record<SectionMaterial, string>> = {
  tube: 'alu',
  hose: 'ahose',
  rubber: 'rub',
  iron: 'iron',
  cable: 'cable',
};

export function pipe(run: Run): Drawing {
  return [
    ...lineShadow(pathOf(run), run.width * 1.02, run.line.lift),
    ...crossingPills(run),
    ...sections(run),
    ...crimps(run),
    ...(run.line.nuts ?? []).flatMap((share) => nut(run, share)),
    ...(run.line.bands ?? []).flatMap((share) => band(run, share)),
    ...(run.line.clamps ?? []).flatMap((share) => clamp(run, share)),
    ...(run.line.skin === 'duct' ? ductRibs(run) : []),
    ...(run.line.skin === 'loom' ? loomRings(run) : []),
  ];
}

const at = (run: Run, share: number): Station => stationAt(run.course, share * run.course.lengthMm);

function crossingPills(run: Run): Drawing {
  const width = run.width * (hasHose(run.line) ? HOSE_FACTOR : 1) + 10;
  return run.over.map(({ alongMm, halfMm }) =>
    stroke(pathOf(run, alongMm - halfMm, alongMm + halfMm), 'shadow', mm(width), 0.6, ROUND),
  );
}

function sections(run: Run): Drawing {
  return sectionsOf(run.line).flatMap(([material, from, to]) => {
    const wide = material === 'hose' && run.loop ? run.width * HOSE_FACTOR : run.width;
    const open = from === 0 || to === 1;
    const cap = open && (run.loop || run.line.ends === 'round') ? 'round' : 'butt';
    return tube(
      pathOf(run, from * run.course.lengthMm, to * run.course.lengthMm),
      mm(wide),
      MATERIAL[material],
      cap,
    );
  });
}

/** A crimped collar wherever hose meets tube. */
function crimps(run: Run): Drawing {
  const parts = sectionsOf(run.line);
  return parts.slice(1).flatMap(([material, from], i) => {
    if (material !== 'hose' && parts[i][0] !== 'hose') return [];
    const middle = from * run.course.lengthMm + (parts[i][0] === 'hose' ? -12 : 12);
    return collar(stationAt(run.course, middle), 38, mm(run.width * 1.54), 'mill', [-0.22, 0.14]);
  });
}

function nut(run: Run, share: number): Drawing {
  const t = at(run, share);
  const m = run.loop ? 'mill' : 'cast';
  const behind = { ...t, x: t.x - t.tx * 17, y: t.y - t.ty * 17 };
  return [...collar(behind, 12, mm(run.width * 1.3), m), ...hexNut(t, 26, mm(run.width * 1.62), m)];
}

function band(run: Run, share: number): Drawing {
  const t = at(run, share);
  const half = run.width * 0.36;
  return [
    ...collar(t, 17, mm(run.width + 5), 'cast'),
    ...bolt(t.x + half * Math.abs(t.ty), t.y - half * Math.abs(t.tx), 4.5),
  ];
}

function clamp(run: Run, share: number): Drawing {
  const half = run.width * 0.5 + 5;
  const drawing: Drawing = [
    shape(roundRect(-9, -half, 18, half * 2 + 22, 5), 'iron-c', 'iron-d', 1.6),
    fill(roundRect(-9, -half, 18, half * 2, 5), down('iron')),
    ...bolt(0, half + 12, 5),
  ];
  return placed(drawing, alongFrame(at(run, share)));
}

const DUCT_PITCH = 0.055;

function ductRibs(run: Run): Drawing {
  const ribs: Drawing[number][] = [];
  for (let share = 0.1; share < 0.92; share += DUCT_PITCH) {
    const t = at(run, share);
    const [nx, ny, h] = [-t.ty, t.tx, run.width * 0.5];
    ribs.push(
      stroke(
        `M${mm(t.x - nx * h)} ${mm(t.y - ny * h)}L${mm(t.x + nx * h)} ${mm(t.y + ny * h)}`,
        'rub-d',
        4,
        0.8,
      ),
      stroke(
        `M${mm(t.x - nx * h * 0.8 - 3)} ${mm(t.y - ny * h * 0.8 - 3)}L${mm(t.x + nx * h * 0.3 - 3)} ${mm(t.y + ny * h * 0.3 - 3)}`,
        'rub-h',
        1.6,
        0.5,
      ),
    );
  }
  return ribs;
}

const LOOM_PITCH_MM = 9;

function loomRings(run: Run): Drawing {
  let rings = '';
  for (let along = 0; along < run.course.lengthMm; along += LOOM_PITCH_MM) {
    const t = stationAt(run.course, along);
    const [nx, ny, h] = [-t.ty, t.tx, run.width * 0.5];
    rings += `M${mm(t.x - nx * h)} ${mm(t.y - ny * h)}L${mm(t.x + nx * h)} ${mm(t.y + ny * h)}`;
  }
  return [stroke(rings, 'rub-d', 1.6, 0.6)];
}
