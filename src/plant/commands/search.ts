/**
 * Looking for a leak: the detector's probe led round a place, soap, the lamp, dye into the low side. What they show comes
 * of the gas there (leakSearch); going round takes its time.
 */
import { DYE_KG_PER_ML, SOAP_S } from '../../equipment/soapAndDye';
import { CASE_OPENINGS } from '../caseOpenings';
import type { Command, Outcome, PlantEvent } from '../commandSpecs';
import { mayTurn } from '../mayTurn';
import { notFree } from '../notFree';
import { done, type Rig, refuse } from '../rig';
import { STEP_S } from '../stepTime';

/** Way of the probe round a joint or port, round a part, and along a line, mm [guess]. */
const ROUND_MM = { joint: 60, port: 60, part: 400, line: 500 } as const;

export const search = {
  sniff(rig: Rig, command: Command) {
    const at = String(command.at);
    const paceMmPerS = Number(command.paceMmPerS);
    const hindrance = hindered(rig, 'detector', at);
    if (hindrance) return hindrance;
    const place = rig.places.get(at);
    const seconds = ROUND_MM[place?.kind ?? 'joint'] / paceMmPerS;
    rig.desk.search.sweep = {
      at,
      from: command.from === 'above' ? 'above' : 'below',
      paceMmPerS,
      gapMm: Number(command.gapMm),
      untilStep: rig.step() + Math.ceil(seconds / STEP_S),
    };
    rig.desk.search.ticks = 0;
    rig.desk.search.shown.detector = false;
    return done({ id: 'sniff-begun', subject: at });
  },

  soap(rig: Rig, command: Command) {
    const at = String(command.at);
    const hindrance = hindered(rig, 'soap', at);
    if (hindrance) return hindrance;
    if (at in CASE_OPENINGS) return refuse('noJointThere');
    if (mayTurn(rig)) return refuse('soapBlownOff');
    rig.desk.search.soap = { at, untilStep: rig.step() + Math.ceil(SOAP_S / STEP_S) };
    rig.desk.search.bubbles = 0;
    rig.desk.search.shown.soap = false;
    return done({ id: 'soap-put-on', subject: at });
  },

  lamp(rig: Rig, command: Command) {
    const at = String(command.at);
    const hindrance = hindered(rig, 'uv-lamp', at);
    if (hindrance) return hindrance;
    const glow = rig.glowAt(at);
    rig.desk.search.glow = glow;
    rig.desk.search.shown.lamp = true;
    const events: PlantEvent[] = [{ id: 'lamp-shone', subject: at }];
    if (glow > 0) events.push({ id: 'glow-seen', subject: at, quantity: glow, unit: '1' });
    return done(...events);
  },

  'inject-dye'(rig: Rig, command: Command) {
    if (!rig.tools.includes('dye')) return refuse('notOnBench');
    const port = [...rig.ports.values()].find(({ side }) => side === 'low');
    if (!port) return refuse('noLowPort');
    if (rig.desk.covers[port.id]) return refuse('underCover');
    const hindrance = notFree(rig, port.id);
    if (hindrance) return hindrance;
    const mL = Number(command.mL);
    if (mL > rig.desk.search.dyeMl) return refuse('dyeShort');
    rig.desk.search.dyeMl -= mL;
    const kg = DYE_KG_PER_ML * mL;
    rig.injectDye(kg, port.at.vessel);
    return done({ id: 'dye-injected', subject: port.id, quantity: kg, unit: 'kg' });
  },
};

function hindered(rig: Rig, tool: 'detector' | 'soap' | 'uv-lamp', at: string): Outcome | null {
  if (!rig.tools.includes(tool)) return refuse('notOnBench');
  return rig.places.get(at)?.isHidden ? refuse('placeHidden') : null;
}
