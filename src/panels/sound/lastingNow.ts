/** Which lasting noises there are now, out of what ears have of the car and the bench: cues, and where knobs stand. */
import type { SessionModel } from '../sessionModel';
import { blowerLoudness, engineLoudness, enginePitchHz, fanLoudness, hissLoudness } from './loudness';
import type { LastingSound } from './soundIds';

export interface Noise {
  readonly id: LastingSound;
  /** 0..1 */
  readonly loudness: number;
  /** Of the tone in it; its own where there is none here. */
  readonly pitchHz?: number;
}

/** A noise that is either there or not. */
const PLAIN: readonly (readonly [LastingSound, signal: string, loudness: number])[] = [
  ['compressor', 'clutch.turning', 0.25],
  ['pump', 'device.vacuum-pump.running', 0.45],
  ['recovery', 'device.recovery-machine.running', 0.5],
  ['knocking', 'compressor.knocking', 0.8],
  ['rattling', 'compressor.rattling', 0.5],
  ['squeal', 'clutch.squealing', 0.7],
];

/** Where the noise of a flow is told only as there or not. */
const SOME = 0.3;
const SPRAY = 0.9;

type Heard = Pick<SessionModel, 'signal' | 'view' | 'layout'>;

function hiss(session: Heard, id: LastingSound, flag: string, level: string): Noise[] {
  if (session.signal(flag) !== 1) return [];
  const ratio = session.signal(level);
  return [{ id, loudness: hissLoudness(Number.isNaN(ratio) ? SOME : Math.max(ratio, 0.01)) }];
}

function turning(session: Heard): Noise[] {
  const rpm = session.signal('engine.rpm');
  const fans = session.layout.parts.map(({ id }) => session.signal(`fan.${id}.speedRatio`) || 0);
  const blower = session.signal('blower.turning') === 1 ? session.signal('blower.speed') : 0;
  const noises: Noise[] = [
    { id: 'engine', loudness: engineLoudness(rpm), pitchHz: enginePitchHz(rpm) },
    { id: 'fan', loudness: fanLoudness(Math.max(0, ...fans)) },
    { id: 'blower', loudness: blowerLoudness(blower) },
  ];
  return noises.filter(({ loudness }) => loudness > 0);
}

export function lastingNow(session: Heard): Noise[] {
  const isSpraying = session.view().hoses.some(({ id }) => session.signal(`spray.${id}`) === 1);
  return [
    ...turning(session),
    ...PLAIN.flatMap(([id, signal, loudness]) => (session.signal(signal) === 1 ? [{ id, loudness }] : [])),
    ...hiss(session, 'meteringHiss', 'metering.hissing', 'metering.hissRatio'),
    ...hiss(session, 'leakHiss', 'leak.hissing', 'leak.hissRatio'),
    ...(isSpraying ? [{ id: 'spray' as const, loudness: SPRAY }] : []),
  ];
}
