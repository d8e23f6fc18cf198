/**
 * How a coupler moves once a hand has put it somewhere, as a function of the seconds since then. Pushed on it goes down,
 * clicks, and is tugged to see whether it holds. Over a fitting it does not match it stands off, is nudged twice, and
 * comes away. Times and distances are [guess], as long as a look needs.
 */
export interface CouplerPose {
  /** Over where it stands, mm. */
  readonly liftMm: number;
  /** Pulled toward its hose, mm. */
  readonly tugMm: number;
  /** The ring of a click: 0 small and strong, 1 wide and gone; null for none. */
  readonly click: number | null;
  readonly done: boolean;
}

export const AT_REST: CouplerPose = { liftMm: 0, tugMm: 0, click: null, done: true };

const PUSH_S = 0.11;
const PUSH_FROM_MM = 26;
const CLICK_S = 0.26;
const TUG_FROM_S = 0.34;
const TUG_S = 0.36;
const TUG_MM = 9;

export function pushedOn(seconds: number): CouplerPose {
  const pushed = Math.min(1, seconds / PUSH_S);
  const click = (seconds - PUSH_S) / CLICK_S;
  const tug = (seconds - TUG_FROM_S) / TUG_S;
  return {
    liftMm: PUSH_FROM_MM * (1 - pushed * pushed),
    tugMm: tug > 0 && tug < 1 ? TUG_MM * Math.sin(Math.PI * Math.min(1, tug * 1.02)) : 0,
    click: click >= 0 && click < 1 ? click : null,
    done: tug >= 1,
  };
}

export const REFUSED_LIFT_MM = 12;
const RISE_S = 0.14;
const NUDGES_S = [0.22, 0.46] as const;
const NUDGE_S = 0.16;
const NUDGE_MM = 8;
const REFUSED_S = 0.9;

/** `still`: it stands off and is not nudged. */
export function refused(seconds: number, still: boolean): CouplerPose {
  const rise = still ? 1 : Math.min(1, seconds / RISE_S);
  const nudged = NUDGES_S.reduce((sum, from) => sum + bump((seconds - from) / NUDGE_S), 0);
  return {
    liftMm: REFUSED_LIFT_MM * rise - (still ? 0 : NUDGE_MM * nudged),
    tugMm: 0,
    click: null,
    done: seconds >= REFUSED_S,
  };
}

const bump = (share: number): number => (share > 0 && share < 1 ? Math.sin(Math.PI * share) : 0);

/** A knob is turned in or out in this time. */
export const TURN_S = 0.3;
/** Steps in which a turning knob is drawn. */
export const TURN_STEPS = 4;
