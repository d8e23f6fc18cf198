/**
 * What a key means on a thing of the bay. Pure: a key, the thing it was pressed on and the hand give an act, or nothing
 * where the key is somebody else's.
 */
import type { Hand } from '../gesture/handGesture';
import { CAN, CAN_TILT, CAN_VALVE } from '../itemIds';
import type { Entry } from './entries';

export type KeyAct =
  | { readonly act: 'go'; readonly arrow: 'up' | 'down' | 'left' | 'right' }
  | { readonly act: 'look' }
  | { readonly act: 'take' }
  | { readonly act: 'put' }
  | { readonly act: 'pick' }
  | { readonly act: 'cancel' }
  | { readonly act: 'cap' }
  | { readonly act: 'coupler' }
  | { readonly act: 'tilt'; readonly degrees: number }
  | { readonly act: 'valve'; readonly sixteenths: number };

export interface KeyPress {
  readonly key: string;
  readonly shift: boolean;
}

export interface CanState {
  readonly tiltDeg: number;
  readonly valveSixteenths: number;
}

const ARROWS = { ArrowUp: 'up', ArrowDown: 'down', ArrowLeft: 'left', ArrowRight: 'right' } as const;

export function keyAct(press: KeyPress, entry: Entry, hand: Hand, can: CanState | null): KeyAct | null {
  const turned = can && canAct(press, entry.id, can);
  if (turned) return turned;
  if (press.key in ARROWS) return { act: 'go', arrow: ARROWS[press.key as keyof typeof ARROWS] };
  switch (press.key) {
    case 'Escape':
      return hand.doing === 'carrying' ? { act: 'cancel' } : null;
    case ' ':
      if (entry.puts) return { act: 'put' };
      return { act: entry.takeable ? 'take' : 'pick' };
    case 'Enter':
      return { act: entry.puts ? 'put' : 'look' };
    case 'c':
    case 'C':
      return { act: 'cap' };
    case 'k':
    case 'K':
      return { act: 'coupler' };
    default:
      return null;
  }
}

/** Tilt with [ ] in 5° steps and valve with + − in sixteenths, on the can or its sliders; Shift takes bigger steps. */
function canAct({ key, shift }: KeyPress, id: string, can: CanState): KeyAct | null {
  const onTilt = id === CAN_TILT;
  const onValve = id === CAN_VALVE;
  if (id !== CAN && !onTilt && !onValve) return null;
  const tilt = (degrees: number): KeyAct => ({ act: 'tilt', degrees: Math.max(0, Math.min(180, degrees)) });
  const valve = (sixteenths: number): KeyAct => ({
    act: 'valve',
    sixteenths: Math.max(0, Math.min(16, sixteenths)),
  });
  const degrees = shift ? 15 : 5;
  const turn = shift ? 2 : 1;
  if (key === '[' || key === '{' || (onTilt && (key === 'ArrowLeft' || key === 'ArrowDown')))
    return tilt(can.tiltDeg - degrees);
  if (key === ']' || key === '}' || (onTilt && (key === 'ArrowRight' || key === 'ArrowUp')))
    return tilt(can.tiltDeg + degrees);
  if (key === '+' || key === '=' || (onValve && (key === 'ArrowRight' || key === 'ArrowUp')))
    return valve(can.valveSixteenths + turn);
  if (key === '-' || key === '_' || (onValve && (key === 'ArrowLeft' || key === 'ArrowDown')))
    return valve(can.valveSixteenths - turn);
  if (key === 'Home') return onValve ? valve(0) : tilt(0);
  if (key === 'End') return onValve ? valve(16) : tilt(180);
  return null;
}
