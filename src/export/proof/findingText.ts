/** A finding of the prover as a sentence; its values are ids and numbers as they were found. */
import type { ProofFinding } from '../../prover/proof';
import { PROVEN } from '../../suspects/proven';
import { word } from '../../words/words';
import {
  baysText,
  causeName,
  listed,
  named,
  percent,
  playerName,
  ruleText,
  tenths,
  testName,
  toolName,
  whole,
} from './written';

export function findingText({ code, values }: ProofFinding): string {
  const text = (key: string): string => String(values[key] ?? '');
  const number = (key: string): number => Number(values[key]);
  const bays = (): string => baysText([values.seeds ?? []].flat().map(Number));
  switch (code) {
    case 'PRV101':
      return word('prove.finding.PRV101', {
        score: tenths(number('score')),
        seeds: bays(),
        mark: whole(number('mark')),
      });
    case 'PRV102':
      return word('prove.finding.PRV102', { rules: [values.rules ?? []].flat().map(ruleText).join(' ') });
    case 'PRV103':
      return word('prove.finding.PRV103', {
        seeds: bays(),
        claimed: causeName(text('claimed')),
        share: percent(number('share')),
        proven: percent(PROVEN),
      });
    case 'PRV104':
      return word('prove.finding.PRV104', {
        seeds: bays(),
        claimed: causeName(text('claimed')),
        charge: named(`prove.charge.${text('charge')}`, text('charge')),
      });
    case 'PRV105':
    case 'PRV108':
      return luckText(code, text('player'), number('passed'), number('seeds'));
    case 'PRV106':
    case 'PRV107':
    case 'PRV112':
    case 'PRV113':
      return pairText(code, text);
    case 'PRV109':
    case 'PRV110': {
      const ends = { least: tenths(number('least')), most: tenths(number('most')) };
      return code === 'PRV109' ? word('prove.finding.PRV109', ends) : word('prove.finding.PRV110', ends);
    }
    case 'PRV111':
      return word('prove.finding.PRV111', {
        level: whole(number('level')),
        names: listed([values.names ?? []].flat().map((cause) => causeName(String(cause)))),
      });
    case 'PRV120':
      return word('prove.finding.PRV120', {
        player: playerName(text('player')),
        passed: whole(number('passed')),
        of: whole(number('of')),
      });
  }
}

function pairText(code: 'PRV106' | 'PRV107' | 'PRV112' | 'PRV113', text: (key: string) => string): string {
  const way =
    text('test') === ''
      ? word('prove.way.none')
      : word('prove.way.tool', { tool: toolName(text('tool')), test: testName(text('test')) });
  const other = causeName(text('other'));
  if (code === 'PRV112') return word('prove.finding.PRV112', { other, way });
  const both = { cause: causeName(text('cause')), other, way };
  if (code === 'PRV113') return word('prove.finding.PRV113', both);
  return code === 'PRV106' ? word('prove.finding.PRV106', both) : word('prove.finding.PRV107', both);
}

function luckText(code: 'PRV105' | 'PRV108', id: string, passed: number, seeds: number): string {
  const player = playerName(id);
  return code === 'PRV105'
    ? word('prove.finding.PRV105', { player, passed: whole(passed), seeds: whole(seeds) })
    : word('prove.finding.PRV108', { player, seeds: whole(seeds) });
}
