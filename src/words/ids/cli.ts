/** Generated from shared/words/en/cli.yaml by `npm run words`; do not edit. */
export interface CliWords {
  'cli.usage': never;
  'cli.usageOfVerb': 'operands' | 'verb';
  'cli.verbs': never;
  'cli.options': never;
  'cli.helpHint': never;
  'cli.noVerb': never;
  'cli.unknownVerb': 'name';
  'cli.unknownVerbNear': 'name' | 'near';
  'cli.unknownOption': 'name' | 'verb';
  'cli.unknownOptionNear': 'name' | 'near' | 'verb';
  'cli.optionNeedsValue': 'example' | 'name';
  'cli.optionTakesNoValue': 'name';
  'cli.optionTwice': 'name';
  'cli.optionMissing': 'example' | 'name' | 'verb';
  'cli.operandMissing': 'operand' | 'verb';
  'cli.operandTooMany': 'operand' | 'verb';
  'cli.cannotRead': 'file' | 'reason';
  'cli.cannotWrite': 'file' | 'reason';
  'cli.help': never;
  'cli.json': never;
}
