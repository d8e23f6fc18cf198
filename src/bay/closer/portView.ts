/** A port from the side: its cover, or fitting, cap and strap on the tube it stands on; under a coupler, both steps of it. */
import type { Layout, Port, RectMm } from '../../layout/layout';
import { lineOf } from '../../layout/trace';
import { type BayFrame, hasCoupler } from '../bayFrame';
import { fittingHeight, fittingSide } from '../drawing/gear/fittingSide';
import { dyeGlow, oilPatch, soapFoam } from '../drawing/gear/leakMarks';
import { portCover } from '../drawing/gear/portCover';
import type { Drawing } from '../drawing/record';
import { backdrop, type CloseView } from './closeView';
import { couplerView } from './couplerView';

const BOX: RectMm = [-224, -88, 448, 287];
/** A port on a pot stands on its lid, drawn as a broad band. */
const LID_MM = 20;

export function portView(layout: Layout, frame: BayFrame, port: Port): CloseView {
  const { cap = 'blank', strap = false, bore = port.boreMm, covered = false } = frame.ports[port.id] ?? {};
  if (covered && port.cover) {
    const [, , w, h] = port.cover.rect;
    const box: RectMm = [-w * 0.62, -h * 0.9, w * 1.24, h * 1.8];
    return { drawing: [...backdrop(box), ...portCover({ rect: [-w / 2, -h / 2, w, h] })], box };
  }
  const hose = frame.hoses.filter(hasCoupler).find((one) => one.port === port.id);
  if (hose) return couplerView(hose, bore);
  const tubeMm = 'line' in port.on ? lineOf(layout, port.on.line).diameterMm : LID_MM;
  return {
    drawing: [
      ...backdrop(BOX),
      ...fittingSide(bore, cap, tubeMm, strap),
      ...marks(frame, port, fittingHeight(bore)),
    ],
    box: BOX,
  };
}

/** Oil creeps down to the foot; soap is put on round it and foams at the mouth too; dye glows where it came out. */
function marks(frame: BayFrame, { id }: Port, height: number): Drawing {
  const { soap, glow } = frame;
  return [
    ...oilPatch(id, -6, height + 26, 74, frame.stains[id] ?? 0),
    ...(soap?.at === id
      ? [...soapFoam(id, 0, height + 6, 62, soap.level), ...soapFoam(`${id}+`, 0, 0, 30, soap.level)]
      : []),
    ...(glow?.at === id ? dyeGlow(id, 0, height + 6, 62, glow.level) : []),
  ];
}
