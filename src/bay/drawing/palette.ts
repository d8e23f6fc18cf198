/**
 * The bay's colours. A material has five steps: a lit top, b top, c front or side, d edge, h rim light. The loop
 * (`alu`, `mill`) is the brightest metal; everything else is quiet. Blue, red and yellow belong to the trainee's own
 * hoses. The dark theme mixes each material toward night, the loop least, so that it still leads the eye.
 */
export type Palette = Readonly<Record<string, string>>;

const STEPS = ['a', 'b', 'c', 'd', 'h'] as const;

/** Five steps in the order of STEPS, then the share of night in the dark theme. */
const MATERIALS: Readonly<Record<string, readonly [string, string, string, string, string, number]>> = {
  floor: ['#6b767b', '#525c61', '#3f484d', '#2c3438', '#8b969b', 0.52],
  apron: ['#88938f', '#717c79', '#58625f', '#3e4745', '#aab4b0', 0.5],
  plas: ['#4f5a60', '#414b51', '#2d3539', '#1c2225', '#7b888f', 0.42],
  cast: ['#9aa3a6', '#808a8e', '#5f686c', '#40484c', '#bcc4c6', 0.42],
  iron: ['#5d6464', '#4c5353', '#393f3f', '#262b2b', '#838b8a', 0.45],
  alu: ['#f7fafb', '#dde5e8', '#a5b2b8', '#4c585f', '#ffffff', 0.16],
  mill: ['#e2e8ea', '#b7c1c6', '#89959b', '#465157', '#ffffff', 0.24],
  rub: ['#41484c', '#31373a', '#222729', '#15181a', '#6b757a', 0.4],
  zinc: ['#b7ab86', '#978b68', '#716749', '#4a432f', '#ddd3b1', 0.42],
  resv: ['#efe9d9', '#dcd4bf', '#b5ac94', '#7d7560', '#fffdf5', 0.34],
  shld: ['#a6a49b', '#8a8881', '#68665f', '#48463f', '#cfcdc4', 0.44],
  fanb: ['#8d9699', '#6d7679', '#495154', '#252b2d', '#c3cacc', 0.4],
  ahose: ['#66717a', '#4c565e', '#343c42', '#1b2125', '#9fabb2', 0.36],
  // high-voltage cables are orange everywhere
  cable: ['#efa560', '#dd7f2f', '#a9571b', '#5f300c', '#ffd9b0', 0.3],
  pad: ['#515759', '#444a4c', '#363b3d', '#272b2d', '#6f7678', 0.48],
};

/** No blue, red or yellow paint. */
const PAINTS: Readonly<Record<string, readonly [string, string, string, string, string]>> = {
  ochre: ['#e6c48a', '#cda663', '#9f7d45', '#6d5430', '#f9e8c4'],
  pearl: ['#f3efe5', '#dad5c8', '#aaa495', '#6b665a', '#ffffff'],
  mulberry: ['#b79cac', '#957889', '#6d5564', '#463540', '#dccad4'],
  moss: ['#b3b58a', '#8d9063', '#686b45', '#46482d', '#dcdebd'],
  fog: ['#c9d0d3', '#a6afb4', '#7b858b', '#525b60', '#eef2f3'],
  sage: ['#b4c9b8', '#8fab98', '#677f70', '#465a4d', '#dfece1'],
};
const PAINT_NIGHT = 0.5;
const NIGHT = '#0a1116';
/** Rim light loses a little more than the rest. */
const RIM_NIGHT = 0.06;

const LIGHT: Palette = {
  page: '#e8e5de',
  shadow: '#0c171d',
  lamp: '#fff3d6',
  ink: '#1b2328',
  'ink-soft': '#56636a',
  card: '#fbfaf6',
  'card-edge': '#c9c5ba',
  low: '#2467b0',
  'low-a': '#4f8fd2',
  'low-d': '#123c6b',
  high: '#c13a34',
  'high-a': '#e0655d',
  'high-d': '#701b18',
  chg: '#c9b037',
  'chg-a': '#e3cf6a',
  'chg-d': '#6d5d12',
  select: '#f2a93b',
  danger: '#d9622b',
  frost: '#f6fbff',
  'frost-d': '#9dbccb',
  dew: '#d7ecf5',
  'dew-d': '#54849a',
  'can-a': '#d9dee0',
  'can-b': '#aab3b7',
};

const DARK: Palette = {
  ...LIGHT,
  page: '#11171b',
  shadow: '#03070a',
  lamp: '#ffe9bd',
  ink: '#e9eef0',
  'ink-soft': '#a3b0b6',
  card: '#1d262b',
  'card-edge': '#3b474d',
  low: '#3f84cf',
  'low-a': '#6ba6e6',
  high: '#d8514a',
  'high-a': '#ee7f77',
  chg: '#a8932d',
  'chg-a': '#c4ad4c',
  select: '#ffc15c',
  danger: '#ff8a4c',
  frost: '#e3eef5',
  'frost-d': '#7d9dae',
  dew: '#b8d6e3',
  'can-a': '#aab2b5',
  'can-b': '#7c868a',
};

/** Printed things keep their paper in both themes. */
const PRINTED: Palette = {
  white: '#ffffff',
  paper: '#f3efe2',
  'paper-head': '#4b575d',
  'paper-ink': '#1b2328',
  'paper-soft': '#4b575d',
  'paper-pen': '#33506b',
  'paper-label': '#e9e5d8',
  glow: '#cdf046',
  oil: '#3a311f',
  lint: '#75684f',
  'lint-1': '#6b5b41',
  'lint-2': '#83725a',
  'lint-3': '#55503f',
  'lint-4': '#92876c',
  'leaf-1': '#8a6d35',
  'leaf-2': '#6f7a3c',
  'leaf-3': '#94562f',
  'leaf-d': '#43371d',
  washer: '#8fb6bf',
};

/** Strength of the lamp over the whole picture. */
export const lampStrength = (dark: boolean): number => (dark ? 0.08 : 0.15);

export function paletteOf(dark: boolean, paint: string): Palette {
  const steps = PAINTS[paint];
  if (!steps) throw new RangeError(`no paint "${paint}"; there is ${Object.keys(PAINTS).join(', ')}`);
  const colours: Record<string, string> = { ...(dark ? DARK : LIGHT), ...PRINTED };
  for (const [name, material] of Object.entries(MATERIALS)) {
    STEPS.forEach((step, i) => {
      const night = material[5] + (step === 'h' ? RIM_NIGHT : 0);
      colours[`${name}-${step}`] = dark
        ? mixed(material[i] as string, NIGHT, night)
        : (material[i] as string);
    });
  }
  STEPS.forEach((step, i) => {
    colours[`paint-${step}`] = dark ? mixed(steps[i], NIGHT, PAINT_NIGHT) : steps[i];
  });
  return colours;
}

/** `share` of `b` in `a`, both #rrggbb. */
export function mixed(a: string, b: string, share: number): string {
  const channel = (hex: string, i: number): number => Number.parseInt(hex.slice(1 + 2 * i, 3 + 2 * i), 16);
  const step = (i: number): string =>
    Math.round(channel(a, i) + (channel(b, i) - channel(a, i)) * share)
      .toString(16)
      .padStart(2, '0');
  return `#${step(0)}${step(1)}${step(2)}`;
}
