/** Generated from shared/words/en/lazyPlayers.yaml by `npm run words`; do not edit. */
export interface LazyPlayersWords {
  'lazyPlayers.nothing.name': never;
  'lazyPlayers.nothing.does': never;
  'lazyPlayers.charge-anyway.name': never;
  'lazyPlayers.charge-anyway.does': never;
  'lazyPlayers.swap-parts-at-random.name': never;
  'lazyPlayers.swap-parts-at-random.does': never;
  'lazyPlayers.visible-text.name': never;
  'lazyPlayers.visible-text.does': never;
  'lazyPlayers.chase-the-window.name': never;
  'lazyPlayers.chase-the-window.does': never;
  'lazyPlayers.one-can-then-look.name': never;
  'lazyPlayers.one-can-then-look.does': never;
  'lazyPlayers.until-the-vent-is-cold.name': never;
  'lazyPlayers.until-the-vent-is-cold.does': never;
  'lazyPlayers.until-the-glass-clears.name': never;
  'lazyPlayers.until-the-glass-clears.does': never;
  'lazyPlayers.always-the-fan.name': never;
  'lazyPlayers.always-the-fan.does': never;
  'lazyPlayers.another-scenarios-solution.name': never;
  'lazyPlayers.another-scenarios-solution.does': never;
}
