/** Why no shipped plan walks a transition: key `region from on to` -> a word of `states`. */
export const unwalkedReasons: Readonly<Record<string, string>> = {
  'session wrapUp always debrief': 'exploring',
  'safety clear rise.critical stopped': 'practice',
  'safety exposed rise.critical stopped': 'practice',
  'safety stopped do.begin breached': 'practice',
};
