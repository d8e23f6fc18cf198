/** Cautions of the place, the hands, strange gas and high voltage: each where its hazard is met, by what has been shown. */
import type { Command } from '../plant/commandSpecs';
import type { Caution, CautionFacts } from './cautions';

const STRONG: readonly unknown[] = ['shop-air', 'oxygen', 'bare-nitrogen'];
/** What may let refrigerant into the room. */
const OPENS: ReadonlySet<Command['do']> = new Set(['uncouple', 'tap', 'purge', 'open-loop', 'identify']);
const UNDOES: ReadonlySet<Command['do']> = new Set(['open-loop', 'replace']);

const NOTHING: readonly Command[] = [];

/** What is switched, opened or taken off that was made to hold. */
function against(command: Command): Caution | null {
  const isOn = command.to === 'on';
  if (command.do === 'bypass' && isOn)
    return { id: command.what === 'tank-limit' ? 'overfill' : 'bridge', safe: NOTHING };
  if (command.do === 'adapter' && isOn) return { id: 'adapter', safe: NOTHING };
  if (command.do === 'pit' && command.to === 'in') return { id: 'pit', safe: NOTHING };
  if (command.do === 'run' && isOn && STRONG.includes(command.device))
    return { id: 'strongGas', safe: NOTHING };
  if (command.do === 'place' && command.at === 'hot-water')
    return { id: 'hotWater', safe: [{ do: 'place', can: command.can, at: 'bath' }] };
  return null;
}

function highVoltage(command: Command, { isElectric, isIsolated }: CautionFacts): Caution | null {
  if (!isElectric) return null;
  if (command.do === 'isolate' && command.to === 'on') return { id: 'plug', safe: NOTHING };
  const isLive = UNDOES.has(command.do) && /compressor/.test(String(command.part)) && !isIsolated;
  return isLive ? { id: 'live', safe: NOTHING } : null;
}

function byFlame(command: Command, { heaterBurns }: CautionFacts): Caution | null {
  return heaterBurns && OPENS.has(command.do) ? { id: 'heater', safe: [{ do: 'heater', to: 'off' }] } : null;
}

function intoTank(command: Command, { gasKnown }: CautionFacts): Caution | null {
  const starts = command.do === 'run' && command.device === 'recovery-machine' && command.to === 'on';
  return starts && !gasKnown ? { id: 'unknownGas', safe: NOTHING } : null;
}

function looseSleeves(command: Command, { view, engineRuns, hoodOpen }: CautionFacts): Caution | null {
  const starts = command.do === 'engine' && Number(command.rpm) > 0 && !engineRuns;
  return starts && hoodOpen && !view.worn.includes('overall')
    ? { id: 'looseClothes', safe: [{ do: 'wear', item: 'overall' }] }
    : null;
}

export const hazardLooks = [against, highVoltage, byFlame, intoTank, looseSleeves] as const;
