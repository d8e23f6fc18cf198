/**
 * Plays noises with Web Audio, all of them made here. The context is opened only after a press or a key, as browsers want
 * it; until then, and while the clock is held, nothing sounds.
 */
import type { Noise } from './lastingNow';
import { LASTING, MOMENTS, type Recipe } from './recipes';
import type { LastingSound, MomentSound } from './soundIds';

export interface SoundPlayer {
  /** 0 off to 1. */
  setVolume(volume: number): void;
  /** The lasting noises from now on; none stops all. */
  lasting(noises: readonly Noise[]): void;
  moment(id: MomentSound): void;
  dispose(): void;
}

interface Voice {
  readonly gain: GainNode;
  readonly tone: OscillatorNode | null;
  /** Where gain and tone were last told to go: what stays needs no telling with every frame. */
  level: number;
  pitchHz: number | undefined;
}

const NOISE_S = 2;
const GLIDE_S = 0.08;
/** The same moment twice within this is one. */
const APART_S = 0.09;

/** White noise from a small generator: the same for everybody. */
function noiseBuffer(context: AudioContext): AudioBuffer {
  const buffer = context.createBuffer(1, NOISE_S * context.sampleRate, context.sampleRate);
  const samples = buffer.getChannelData(0);
  let state = 1;
  for (let i = 0; i < samples.length; i++) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    samples[i] = state / 2 ** 31 - 1;
  }
  return buffer;
}

/** Source and filter of a recipe, running, into `into`. */
function begin(
  context: AudioContext,
  noise: AudioBuffer,
  recipe: Recipe,
  into: AudioNode,
): AudioScheduledSourceNode {
  const filter = new BiquadFilterNode(context, {
    type: recipe.filter,
    frequency: recipe.filterHz,
    Q: recipe.q,
  });
  const source =
    recipe.source === 'noise'
      ? new AudioBufferSourceNode(context, { buffer: noise, loop: true })
      : new OscillatorNode(context, { type: recipe.source, frequency: recipe.pitchHz ?? 100 });
  source.connect(filter).connect(into);
  source.start();
  return source;
}

/** Swelling by half up and down, so often a second. */
function beat(context: AudioContext, hz: number, gain: AudioParam): void {
  const swing = new OscillatorNode(context, { type: 'sawtooth', frequency: hz });
  const depth = new GainNode(context, { gain: -0.5 });
  swing.connect(depth).connect(gain);
  swing.start();
}

function makeVoice(context: AudioContext, noise: AudioBuffer, recipe: Recipe, out: AudioNode): Voice {
  const gain = new GainNode(context, { gain: 0 });
  gain.connect(out);
  let into: AudioNode = gain;
  if (recipe.beatHz !== undefined) {
    const swell = new GainNode(context, { gain: 0.5 });
    beat(context, recipe.beatHz, swell.gain);
    into = swell;
    swell.connect(gain);
  }
  const source = begin(context, noise, recipe, into);
  const tone = source instanceof OscillatorNode ? source : null;
  return { gain, tone, level: 0, pitchHz: recipe.pitchHz };
}

function steer(voice: Voice, level: number, pitchHz: number | undefined, nowS: number): void {
  if (level !== voice.level) voice.gain.gain.setTargetAtTime(level, nowS, GLIDE_S);
  if (pitchHz !== undefined && pitchHz !== voice.pitchHz)
    voice.tone?.frequency.setTargetAtTime(pitchHz, nowS, GLIDE_S);
  voice.level = level;
  voice.pitchHz = pitchHz ?? voice.pitchHz;
}

interface Desk {
  readonly context: AudioContext;
  readonly master: GainNode;
  readonly noise: AudioBuffer;
  readonly voices: Map<LastingSound, Voice>;
}

function openDesk(): Desk {
  const context = new AudioContext();
  const master = new GainNode(context, { gain: 0 });
  master.connect(context.destination);
  return { context, master, noise: noiseBuffer(context), voices: new Map() };
}

function playLasting({ context, master, noise, voices }: Desk, noises: readonly Noise[]): void {
  const now = context.currentTime;
  for (const [id, voice] of voices) if (!noises.some((one) => one.id === id)) steer(voice, 0, undefined, now);
  for (const { id, loudness, pitchHz } of noises) {
    const voice = voices.get(id) ?? makeVoice(context, noise, LASTING[id], master);
    voices.set(id, voice);
    steer(voice, loudness * LASTING[id].gain, pitchHz, now);
  }
}

function playMoment({ context, master, noise }: Desk, id: MomentSound): void {
  const recipe = MOMENTS[id];
  const now = context.currentTime;
  const gain = new GainNode(context, { gain: recipe.gain });
  gain.connect(master);
  gain.gain.exponentialRampToValueAtTime(0.001, now + recipe.seconds);
  begin(context, noise, recipe, gain).stop(now + recipe.seconds);
}

const GESTURES = ['pointerdown', 'keydown'] as const;

export function soundPlayer(): SoundPlayer {
  let desk: Desk | null = null;
  /** The machine has nothing to play on; it is asked once. */
  let isMute = false;
  let volume = 0;
  let noises: readonly Noise[] = [];
  const last = new Map<MomentSound, number>();
  const open = (): void => {
    if (volume === 0 || isMute) return;
    try {
      desk ??= openDesk();
    } catch {
      isMute = true;
      return;
    }
    void desk.context.resume().catch(() => undefined);
    desk.master.gain.setTargetAtTime(volume, desk.context.currentTime, GLIDE_S);
    playLasting(desk, noises);
  };
  for (const gesture of GESTURES) document.addEventListener(gesture, open);
  return {
    setVolume(next) {
      volume = next;
      desk?.master.gain.setTargetAtTime(volume, desk.context.currentTime, GLIDE_S);
    },
    lasting(next) {
      noises = next;
      if (desk) playLasting(desk, noises);
    },
    moment(id) {
      if (!desk || volume === 0) return;
      const now = desk.context.currentTime;
      if (now - (last.get(id) ?? Number.NEGATIVE_INFINITY) < APART_S) return;
      last.set(id, now);
      playMoment(desk, id);
    },
    dispose() {
      for (const gesture of GESTURES) document.removeEventListener(gesture, open);
      void desk?.context.close();
      desk = null;
    },
  };
}
