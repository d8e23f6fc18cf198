/** The best scored result of each scenario, for the shelf. One of an assessed session counts before any of practice. */

import type { DebriefData } from '../panels/debriefModel';
import type { BestResult } from '../panels/Shelf';
import { keepText } from './storage';

const KEY = 'portside-best';

function all(): Record<string, BestResult> {
  try {
    const parsed: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return typeof parsed === 'object' && parsed !== null ? (parsed as Record<string, BestResult>) : {};
  } catch {
    return {};
  }
}

export function bestOf(scenarioId: string): BestResult | null {
  const found = all()[scenarioId];
  return found && Number.isFinite(found.score) && Array.isArray(found.domains) ? found : null;
}

type Result = Pick<BestResult, 'score' | 'mode'>;

/** In practice one may go back, so its score says less: only among results of one mode does the number decide. */
export function isBetter(now: Result, best: Result | null): boolean {
  if (best === null) return true;
  if (now.mode !== best.mode) return now.mode === 'assessed';
  return now.score > best.score;
}

export function keepResult(scenarioId: string, debrief: DebriefData): void {
  const now = { score: debrief.reported, mode: debrief.mode };
  if (!debrief.scored || !isBetter(now, bestOf(scenarioId))) return;
  const domains = debrief.domains.map(({ earned, possible }) => (possible > 0 ? earned / possible : 0));
  keepText(KEY, JSON.stringify({ ...all(), [scenarioId]: { ...now, domains } }));
}
