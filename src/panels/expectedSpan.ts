/**
 * What a healthy car would show where this one is being read. For both sides or for none: a low side alone says nothing,
 * and a charging hose's gauge is alone. An assessed session has none.
 */
import type { GaugeSource } from './GaugePanel';
import type { SessionModel } from './sessionModel';

export interface ExpectedSpan {
  readonly fromGaugePa: number;
  readonly toGaugePa: number;
}

const SIDES = { low: 'lowSide', high: 'highSide' } as const;
const SET: readonly string[] = ['gauge-low', 'gauge-high'];

export function expectedSpan(session: SessionModel, { hub }: GaugeSource): ExpectedSpan | null {
  if (hub === 'charging') return null;
  const reading = session.view().hoses.filter(({ port, couplerOpen }) => port !== null && couplerOpen);
  if (!SET.every((id) => reading.some((hose) => hose.id === id))) return null;
  const at = (end: string): number => session.signal(`expected.${SIDES[hub]}.${end}GaugePressurePa`);
  const [fromGaugePa, toGaugePa] = [at('from'), at('to')];
  return Number.isNaN(fromGaugePa) || Number.isNaN(toGaugePa) ? null : { fromGaugePa, toGaugePa };
}
