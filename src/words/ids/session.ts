/** Generated from shared/words/en/session.yaml by `npm run words`; do not edit. */
export interface SessionWords {
  'session.refused.notBegun': never;
  'session.refused.hasBegun': never;
  'session.refused.over': never;
  'session.refused.stopped': never;
  'session.refused.noGoingBack': never;
  'session.refused.notYetLived': never;
  'session.refused.outOfOrder': never;
  'session.refused.noHints': never;
  'session.refused.noSuchHint': 'levels';
  'session.refused.noSuchCommand': 'command';
  'session.refused.noSuchCommandNear': 'command' | 'near';
  'session.refused.noSuchArgument': 'command' | 'name';
  'session.refused.noSuchArgumentNear': 'command' | 'name' | 'near';
  'session.refused.argumentMissing': 'command' | 'name';
  'session.refused.notInRange': 'given' | 'max' | 'min' | 'name' | 'step' | 'unit';
  'session.refused.notText': 'given' | 'name';
  'session.refused.noSuchWait': 'given' | 'known';
  'session.refused.notAChoice': 'given' | 'known' | 'name';
  'session.card.reading': 'channel';
  'session.card.readingAt': 'channel' | 'place';
  'session.card.ofEight': 'level';
  'session.card.look': 'part';
  'session.card.judged': 'port' | 'side';
  'session.card.decided': 'answer';
  'session.card.cause': 'cause' | 'sure';
  'session.card.replaced': 'part';
  'session.card.label': never;
}
