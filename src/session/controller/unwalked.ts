/** Why no shipped plan walks a transition: key `region from on to` -> a word of `states`. */
export const unwalkedReasons: Readonly<Record<string, string>> = {
  'session wrapUp always debrief': 'exploring',
  'safety clear rise.critical stopped': 'practice',
  'safety exposed rise.critical stopped': 'practice',
  'safety stopped do.begin breached': 'practice',
  'safety exposed fall.exposed clear': 'mended',
  'finding unread do.trace traced': 'otherWay',
  'finding unread do.judge-port judged': 'otherWay',
  'finding read do.judge-port judged': 'otherWay',
  'diagnosis open do.diagnose named': 'otherWay',
  'diagnosis open do.replace repaired': 'otherWay',
  'diagnosis decided do.replace repaired': 'otherWay',
  'diagnosis repaired do.diagnose named': 'otherWay',
  'charging canOn fall.canTapped noCan': 'mended',
};
