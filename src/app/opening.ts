/** What a session is opened with: what the address asks for, and the session that this browser kept where it is that one. */
import type { SessionLog } from '../session/corePort';
import type { Asked } from './address';
import type { Other } from './logStanding';
import { hashOfOwn, ownId } from './ownId';
import { type KeptSession, keptSession } from './savedSession';

export interface Opening {
  readonly asked: Asked;
  readonly log: SessionLog | null;
  /** Gone on from a moment that was just looked at. */
  readonly straightOn?: true;
  /** Set where the kept session is of another engine or scenario: then it is only shown. */
  readonly shown: { readonly kept: KeptSession; readonly other: NonNullable<Other> } | null;
}

/** The kept session, with what its scenario goes by on the page and, for one's own, its title. */
export interface KeptHere extends KeptSession {
  readonly scenarioId: string;
  readonly ownTitle: string | null;
}

export async function keptHere(): Promise<KeptHere | null> {
  const kept = await keptSession();
  if (!kept) return null;
  const { scenarioHash, scenarioId } = kept.log;
  const { shownOwn } = await import('./ownStore');
  const own = await shownOwn(scenarioHash);
  return own
    ? { ...kept, scenarioId: ownId(scenarioHash), ownTitle: own.words.title }
    : { ...kept, scenarioId, ownTitle: null };
}

const isOf = ({ scenarioId, mode, seed }: Asked, kept: KeptHere): boolean =>
  kept.scenarioId === scenarioId && kept.log.mode === mode && kept.log.seed === seed;

/** Only a session of this engine and this scenario is run again; hashes are looked at before, not after. */
export async function openingOf(asked: Asked | null, kept: KeptHere | null): Promise<Opening | null> {
  if (!asked) return null;
  if (!kept || !isOf(asked, kept)) return { asked, log: null, shown: null };
  const { standingOf } = await import('./logStanding');
  const other = await standingOf(kept.log, kept.scenarioId);
  return other === null
    ? { asked, log: kept.log, shown: null }
    : { asked, log: null, shown: { kept, other } };
}

export const askedOf = ({ mode, seed }: SessionLog, scenarioId: string): Asked => ({
  scenarioId,
  mode,
  seed,
  lapse: 1,
});

export const isOwn = (opening: Opening | null): boolean =>
  opening !== null && hashOfOwn(opening.asked.scenarioId) !== null;
