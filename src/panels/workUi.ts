/**
 * What the work screen itself remembers: which form is open, what is in hand, which caution stands. None of it reaches
 * the core; a reload forgets it.
 */
import { createSignal } from 'solid-js';
import type { Command } from '../plant/commandSpecs';
import { word } from '../words/words';
import type { Picture } from './CloseUp';
import { type Caution, type CautionId, cautionBefore } from './cautions';
import type { FormName } from './DecisionBar';
import type { SessionModel } from './sessionModel';

export type Open =
  | { readonly kind: FormName }
  | { readonly kind: 'tool'; readonly tool: string }
  | { readonly kind: 'port'; readonly port: string }
  | { readonly kind: 'part'; readonly part: string };

export interface StandingCaution {
  readonly caution: Caution;
  readonly command: Command;
}

/** The same act is not cautioned twice within a minute of job time. */
const QUIET_S = 60;

const NOT_OPEN = null;

/** Where one decides or writes the car does not run away: from a lapse the clock goes back to ×1. */
const WRITES: readonly Open['kind'][] = ['finding', 'cause', 'refer', 'label', 'entries', 'finish'];

/** Behind the safe answer of these, what was meant is done. */
const GOES_ON: readonly CautionId[] = ['goggles', 'looseClothes', 'heater'];

/** A session whose `send` looks for cautions first, and the state of the screen round it. */
export function makeWorkUi(raw: SessionModel) {
  const [open, setOpen] = createSignal<Open | null>(NOT_OPEN);
  const [caution, setCaution] = createSignal<StandingCaution | null>(null);
  const [picture, setPicture] = createSignal<Picture | null>(null);
  const [refusalRead, setRefusalRead] = createSignal(false);
  const [tab, setTab] = createSignal<'instruments' | 'job'>('instruments');
  /** An exam warns once, before the door; what stands is said in every mode. */
  const cautions = raw.mode !== 'assessed';
  const waved = new Map<CautionId, number>();

  const facts = () => ({
    view: raw.view(),
    layout: raw.layout,
    engineRuns: raw.signal('engine.rpm') > 0,
    doorOpen: raw.signal('place.shut') !== 1,
    highValveOpen: raw.signal('manifold.high.sixteenths') > 0,
    hoodOpen: raw.signal('hood.open') === 1,
    heaterBurns: raw.signal('heater.on') === 1,
    isElectric: raw.layout.parts.some(({ kind }) => kind === 'compressor-electric'),
    isIsolated: raw.signal('highVoltage.isolated') === 1,
    gasKnown: !Number.isNaN(raw.signal('identifier.r134aShare')),
    sealerKnown: !Number.isNaN(raw.signal('sealerTest.found')),
    tools: raw.facts.tools,
    hubStands:
      raw.signal('engine.rpm') > 0 && raw.signal('ac.on') === 1 && raw.signal('clutch.turning') === 0,
  });
  const quiet = (id: CautionId): boolean =>
    raw.clock().seconds - (waved.get(id) ?? Number.NEGATIVE_INFINITY) < QUIET_S;

  const send = (command: Command): void => {
    const found = cautions ? cautionBefore(command, facts(), quiet) : null;
    if (found) setCaution({ caution: found, command });
    else raw.send(command);
  };
  const answerSafe = (): void => {
    const standing = caution();
    setCaution(null);
    if (!standing) return;
    for (const command of standing.caution.safe) raw.send(command);
    if (GOES_ON.includes(standing.caution.id)) {
      waved.set(standing.caution.id, raw.clock().seconds);
      send(standing.command);
    }
    if (standing.caution.id === 'whichPort')
      setOpen({ kind: 'port', port: String(standing.caution.safe[0]?.port) });
    if (standing.caution.id === 'hoseInZone' || standing.caution.id === 'hoseOnHot') {
      const hose = raw.view().hoses.find((one) => one.port !== null);
      setOpen({ kind: 'tool', tool: hose?.id === 'charging' ? 'charging' : 'gauge-set' });
    }
  };
  const answerGo = (): void => {
    const standing = caution();
    setCaution(null);
    if (!standing) return;
    waved.set(standing.caution.id, raw.clock().seconds);
    send(standing.command);
  };
  const show = (what: Open): void => {
    setOpen(what);
    if (WRITES.includes(what.kind) && raw.clock().lapse > 1)
      raw.setLapse(1, word('work.clock.fellBack', { what: word('work.clock.writing') }));
  };
  const session: SessionModel = {
    ...raw,
    send,
    get facts() {
      return raw.facts;
    },
  };
  return {
    session,
    open,
    close: () => setOpen(null),
    show,
    take: (tool: string) => {
      const now = open();
      setOpen(now?.kind === 'tool' && now.tool === tool ? null : { kind: 'tool', tool });
    },
    heldTool: (): string | null => {
      const now = open();
      return now?.kind === 'tool' ? now.tool : null;
    },
    caution,
    answerSafe,
    answerGo,
    /** How the bay brings a thing near; null while there is no drawn bay. */
    picture,
    showPictures: (draw: Picture | null) => setPicture(() => draw),
    /** Who has read that nothing is kept is not told again. */
    refusalRead,
    readRefusal: () => void setRefusalRead(true),
    tab,
    setTab,
  };
}

export type WorkUi = ReturnType<typeof makeWorkUi>;
