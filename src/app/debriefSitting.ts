/**
 * One sitting over a debrief: what is thought, what is tried otherwise, and where its reader stands. It is made once for a
 * finished session; menu and help may lie over the page meanwhile.
 */
import { createEffect, createSignal, onCleanup, untrack } from 'solid-js';
import type { DebriefData, DebriefReading } from '../panels/debriefModel';
import { debriefReading } from '../panels/debriefReading';
import { isFixed } from '../panels/whatIfEdits';
import type { SessionLog } from '../session/corePort';
import type { SessionFile, Thought } from '../session/sessionFileText';
import { keepScored, keptSession } from './savedSession';
import { type RunningWhatIf, startWhatIf } from './whatIf';

export interface DebriefSitting {
  readonly log: SessionLog;
  readonly whatIf: RunningWhatIf;
  readonly reading: DebriefReading;
  readonly thought: () => Thought;
  readonly setThought: (thought: Thought) => void;
  /** What the session file holds now. */
  file(): SessionFile;
}

const NO_THOUGHT: Thought = { surprised: '', otherwise: '' };
const hasThought = ({ surprised, otherwise }: Thought): boolean => `${surprised}${otherwise}`.trim() !== '';

/** What can be left out. */
const numbersOf = ({ actions }: DebriefData): number[] =>
  actions.filter(({ command }) => !isFixed(command)).map(({ logNumber }) => logNumber);

function fileOf(data: DebriefData, thought: Thought): SessionFile {
  const file = JSON.parse(data.file) as SessionFile;
  return hasThought(thought) ? { ...file, thought } : file;
}

export function debriefSitting(
  data: () => DebriefData,
  scenarioId: string,
  nameOf: (id: string) => string,
  lent: MessagePort,
): DebriefSitting {
  const [thought, setThought] = createSignal<Thought>(NO_THOUGHT);
  const file = (): SessionFile => fileOf(data(), thought());
  const { log } = untrack(file);
  const whatIf = startWhatIf({ log, scenarioId, lent, weighed: () => data().weighed, nameOf });
  onCleanup(() => whatIf.dispose());
  const reading = debriefReading();
  // while ghosts weigh what was read the processor is theirs
  const mayWorkAhead = (): boolean => reading.part() !== 'happened' && !data().isWeighing;
  createEffect(() => mayWorkAhead() && untrack(() => whatIf.workAhead(numbersOf(data()))));
  /** What was thought before is read before anything is written over it. */
  const [isRead, setRead] = createSignal(false);
  const read = async (): Promise<void> => {
    const kept = await keptSession();
    if (kept?.thought && kept.last?.logHash === data().logHash) setThought(kept.thought);
    setRead(true);
  };
  void untrack(read);
  createEffect(() => isRead() && void keepScored(file()));
  return { log, whatIf, reading, thought, setThought, file };
}
