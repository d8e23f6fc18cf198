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

function fouling(command: Command, { sealerKnown, tools }: CautionFacts): Caution | null {
  const starts = command.do === 'run' && command.device === 'recovery-machine' && command.to === 'on';
  return starts && !sealerKnown && tools.includes('sealer-test') ? { id: 'sealer', safe: NOTHING } : null;
}

function handInFan({ do: act, part }: Command): Caution | null {
  const isThere = (act === 'clean' || act === 'replace') && /^fan\d?$/.test(String(part));
  return isThere ? { id: 'fan', safe: NOTHING } : null;
}

const lettingOut = (command: Command): Caution | null =>
  command.do === 'open-loop' ? { id: 'letOut', safe: NOTHING } : null;

function oil(command: Command, { isElectric }: CautionFacts): Caution | null {
  if (!isElectric) return null;
  const isOther = command.do === 'inject-oil' || (command.do === 'fill-oil' && command.kind !== 'POE');
  return isOther ? { id: 'wrongOil', safe: NOTHING } : null;
}

/** A can about to be opened on a gas that nobody has looked at, or on a hub that stands. */
function feeding(command: Command, { view, gasKnown, tools, hubStands }: CautionFacts): Caution | null {
  const can = view.cans.find(({ id }) => id === command.can);
  const isOpening = command.do === 'can-valve' && Number(command.turn) > 0 && can?.valveSixteenths === 0;
  if (!isOpening || can?.onto === null) return null;
  if (!gasKnown && tools.includes('identifier')) return { id: 'canOnUnknown', safe: NOTHING };
  return hubStands ? { id: 'standing', safe: NOTHING } : null;
}

function looseSleeves(command: Command, { view, engineRuns, hoodOpen }: CautionFacts): Caution | null {
  const starts = command.do === 'engine' && Number(command.rpm) > 0 && !engineRuns;
  return starts && hoodOpen && !view.worn.includes('overall')
    ? { id: 'looseClothes', safe: [{ do: 'wear', item: 'overall' }] }
    : null;
}

export const hazardLooks = [
  ...[against, highVoltage, byFlame, intoTank, fouling, looseSleeves],
  ...[handInFan, lettingOut, oil, feeding],
] as const;
