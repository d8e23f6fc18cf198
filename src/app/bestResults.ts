/** The best scored result of each scenario, for the shelf. */

import type { DebriefData } from '../panels/debriefModel';
import type { BestResult } from '../panels/Shelf';

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

export function keepResult(scenarioId: string, debrief: DebriefData): void {
  if (!debrief.scored || (bestOf(scenarioId)?.score ?? -1) >= debrief.reported) return;
  const domains = debrief.domains.map(({ earned, possible }) => (possible > 0 ? earned / possible : 0));
  try {
    localStorage.setItem(
      KEY,
      JSON.stringify({ ...all(), [scenarioId]: { score: debrief.reported, mode: debrief.mode, domains } }),
    );
  } catch {
    // The shelf forgets it.
  }
}
