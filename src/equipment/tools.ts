/**
 * What may lie on a bench besides hoses, cans and thermometers, by id. Those that are screwed on to a hose are devices:
 * each joins what it holds, pulls or feeds to that hose. The rest is held in a hand.
 */
export const DEVICE_IDS = [
  'recovery-machine',
  'vacuum-pump',
  'micron-gauge',
  'charging-tank',
  'nitrogen',
  'oil-injector',
  'shop-air',
  'oxygen',
  'bare-nitrogen',
] as const;
export type DeviceId = (typeof DEVICE_IDS)[number];

export const TOOL_IDS = [
  ...DEVICE_IDS,
  ...([
    'identifier',
    'detector',
    'soap',
    'uv-lamp',
    'dye',
    'sealer-test',
    'loose-adapter',
    'conversion-kit',
  ] as const),
] as const;
export type ToolId = (typeof TOOL_IDS)[number];
