/** What was written last by a command of one choice, as the card has it. */
import type { SessionModel } from './sessionModel';

const CARD_WORDS = {
  'note-loop': 'session.card.loop',
  'note-gas': 'session.card.gas',
  'note-clutch': 'session.card.clutch',
} as const;

export function lastWritten(session: SessionModel, command: keyof typeof CARD_WORDS): string | null {
  const lines = session.view().card.filter((line) => line.word === CARD_WORDS[command]);
  return Object.values(lines[lines.length - 1]?.params ?? {})[0] ?? null;
}
