/** Service tools as they lie on the bench: name, icon, and what they are doing. */
import { isWordId, say, word } from '../words/words';
import type { IconName } from './Icon';
import type { SessionModel } from './sessionModel';

const ICONS: Readonly<Record<string, IconName>> = {
  'recovery-machine': 'machine',
  'vacuum-pump': 'pump',
  'micron-gauge': 'dial',
  'charging-tank': 'tank',
  nitrogen: 'cylinder',
  'oil-injector': 'syringe',
  identifier: 'sample',
  detector: 'probe',
  soap: 'bubbles',
  'uv-lamp': 'lamp',
  dye: 'drop',
  'shop-air': 'cylinder',
  oxygen: 'cylinder',
  'bare-nitrogen': 'cylinder',
  'sealer-test': 'tube',
  'conversion-kit': 'kit',
  'loose-adapter': 'clamp',
};

export interface BenchTool {
  readonly id: string;
  readonly icon: IconName;
  readonly name: string;
  readonly state: string;
  readonly look: 'ready' | 'out';
}

const wordOf = (id: string): string => (isWordId(id) ? say({ id }) : id);

export const benchToolName = (tool: string): string => wordOf(`panels.service.${tool}`);
export const benchToolNote = (tool: string): string => wordOf(`panels.service.${tool}Sub`);

export function benchTools(session: SessionModel): BenchTool[] {
  return session.facts.tools.map((id) => {
    const isOn = session.view().devices.some((device) => device.id === id && device.onto !== null);
    const runs = session.signal(`device.${id}.running`) === 1;
    const samples = id === 'identifier' && session.signal('identifier.sampling') === 1;
    const busy = runs || samples ? word('work.bench.state.inUse') : word('work.bench.state.tapped');
    const isOut = isOn || samples;
    return {
      id,
      icon: ICONS[id] ?? 'clamp',
      name: benchToolName(id),
      state: isOut ? busy : word('work.bench.state.ready'),
      look: isOut ? 'out' : 'ready',
    };
  });
}
