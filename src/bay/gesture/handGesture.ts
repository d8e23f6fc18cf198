/**
 * What a hand is doing, as a pure function of events: press, carry, let go; or take, look for a place, put. A pointer
 * that drags, a pointer that clicks source then target, and a keyboard all go through it, so all three mean the same.
 *
 * A coupler let go over a fitting it does not match is still reported (the trainee tried it), and falls. Let go over
 * nothing it falls; if it stood on a port before, that takes it off. Pulled at only a little, it holds: a tug.
 */
import type { PointMm } from '../../layout/layout';
import { CAN, MAT } from '../itemIds';

/** What lies under a pointer: its id, and whether a hand can take it away. */
export interface Under {
  readonly id: string;
  readonly takeable: boolean;
  /** What it is on: a coupler its port, a hose's end the can. */
  readonly from: string | null;
}

export type Hand =
  | { readonly doing: 'nothing' }
  | {
      readonly doing: 'pressing';
      readonly under: Under | null;
      readonly at: PointMm;
      /** Where what holds on its port or can is pulled to. */
      readonly tugged?: PointMm;
    }
  | {
      readonly doing: 'carrying';
      readonly item: string;
      readonly from: string | null;
      readonly at: PointMm | null;
      /** A drag ends when the pointer is let go; otherwise the item stays in the hand until it is put down. */
      readonly dragged: boolean;
      readonly valid: readonly string[];
    };

export type HandEvent =
  | { readonly kind: 'down'; readonly under: Under | null; readonly at: PointMm }
  | { readonly kind: 'move'; readonly at: PointMm; readonly valid: (item: string) => readonly string[] }
  | {
      readonly kind: 'up';
      readonly at: PointMm;
      readonly over: string | null;
      readonly valid: (item: string) => readonly string[];
    }
  | { readonly kind: 'take'; readonly under: Under; readonly valid: (item: string) => readonly string[] }
  | { readonly kind: 'put'; readonly target: string }
  | { readonly kind: 'cancel' };

export type Intent =
  | { readonly kind: 'pick'; readonly id: string }
  | { readonly kind: 'drop'; readonly item: string; readonly target: string }
  | { readonly kind: 'fall'; readonly item: string };

export interface HandStep {
  readonly hand: Hand;
  readonly intents: readonly Intent[];
}

/** A press that moves less than this is a click, in mm of the bay. */
const CLICK_MM = 9;
/** A coupler comes off its port, a hose its can, when it is pulled this far; less is a tug, and it holds. */
const TUG_MM = 45;
const NOTHING: Hand = { doing: 'nothing' };

export const emptyHand = (): Hand => NOTHING;

export function handStep(hand: Hand, event: HandEvent): HandStep {
  switch (event.kind) {
    case 'down':
      return hand.doing === 'carrying'
        ? stay(hand)
        : stay({ doing: 'pressing', under: event.under, at: event.at });
    case 'move':
      return stay(moved(hand, event.at, event.valid));
    case 'up':
      return released(hand, event.at, event.over, event.valid);
    case 'take':
      return stay(carry(event.under, null, false, event.valid));
    case 'put':
      return hand.doing === 'carrying' ? putDown(hand, event.target) : stay(hand);
    case 'cancel':
      return stay(NOTHING);
  }
}

const stay = (hand: Hand): HandStep => ({ hand, intents: [] });

function carry(
  under: Under,
  at: PointMm | null,
  dragged: boolean,
  valid: (item: string) => readonly string[],
): Hand {
  return { doing: 'carrying', item: under.id, from: under.from, at, dragged, valid: valid(under.id) };
}

function moved(hand: Hand, at: PointMm, valid: (item: string) => readonly string[]): Hand {
  if (hand.doing === 'carrying') return { ...hand, at };
  if (hand.doing !== 'pressing' || !hand.under?.takeable) return hand;
  if (hand.tugged === undefined && isWithin(CLICK_MM, hand.at, at)) return hand;
  if (hand.under.from !== null && isWithin(TUG_MM, hand.at, at)) return { ...hand, tugged: at };
  return carry(hand.under, at, true, valid);
}

function isWithin(mm: number, a: PointMm, b: PointMm): boolean {
  const [dx, dy] = [a[0] - b[0], a[1] - b[1]];
  return dx * dx + dy * dy < mm * mm;
}

function released(
  hand: Hand,
  at: PointMm,
  over: string | null,
  valid: (item: string) => readonly string[],
): HandStep {
  if (hand.doing === 'carrying') return hand.dragged ? letGo(hand, over) : clickedWhileHolding(hand, over);
  if (hand.doing !== 'pressing' || !hand.under || hand.tugged) return stay(NOTHING);
  // A loose coupler that is clicked comes into the hand; anything else is looked at or worked, the can in its form.
  if (hand.under.takeable && hand.under.from === null && hand.under.id !== CAN)
    return stay(carry(hand.under, at, false, valid));
  return { hand: NOTHING, intents: [{ kind: 'pick', id: hand.under.id }] };
}

type Carrying = Extract<Hand, { readonly doing: 'carrying' }>;

/** Holding by click: a click on a place puts it there, a click on nothing keeps it in the hand. */
const clickedWhileHolding = (hand: Carrying, over: string | null): HandStep =>
  over === null ? stay(hand) : putDown(hand, over);

function letGo(hand: Carrying, over: string | null): HandStep {
  if (over !== null) return putDown(hand, over);
  const fall: Intent = { kind: 'fall', item: hand.item };
  const off: readonly Intent[] = hand.from === null ? [] : [{ kind: 'drop', item: hand.item, target: MAT }];
  return { hand: NOTHING, intents: [...off, fall] };
}

function putDown(hand: Carrying, target: string): HandStep {
  const drop: Intent = { kind: 'drop', item: hand.item, target };
  const fits = hand.valid.includes(target);
  return { hand: NOTHING, intents: fits ? [drop] : [drop, { kind: 'fall', item: hand.item }] };
}
