/** The keyboard in the bay: finds the thing that has focus, asks what the key means there, and does it. */
import type { Layout, PointMm } from '../../layout/layout';
import { type Arrow, neighbour } from '../../layout/order';
import type { BayCallbacks } from '../bayApi';
import { type BayFrame, hasCoupler } from '../bayFrame';
import type { Hands } from '../hands';
import { capId, couplerId } from '../itemIds';
import type { Entry } from './entries';
import { type KeyAct, keyAct } from './keys';
import type { Twin } from './twin';

export interface KeyboardHost {
  readonly layout: Layout;
  readonly twin: Twin;
  readonly hands: Hands;
  readonly callbacks: BayCallbacks;
  frame(): BayFrame;
  entries(): readonly Entry[];
}

/** Listens on the twin's root, which takes the listeners with it when it goes. */
export function bindKeyboard(host: KeyboardHost): void {
  const { twin, hands } = host;
  twin.root.addEventListener('keydown', (event) => {
    const entry = twin.entryOf(event.target);
    if (!entry || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = keyAct({ key: event.key, shift: event.shiftKey }, entry, hands.hand(), host.frame().can);
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    doAct(host, act, entry);
  });
  // A button would click itself when Space is let go; the key has acted already.
  twin.root.addEventListener('keyup', (event) => {
    if (event.key === ' ' && twin.entryOf(event.target)) event.preventDefault();
  });
}

function doAct(host: KeyboardHost, act: KeyAct, entry: Entry): void {
  const { hands, callbacks } = host;
  switch (act.act) {
    case 'go':
      goTo(host, entry, act.arrow);
      break;
    case 'look':
      callbacks.onLook(entry.id);
      break;
    case 'take':
      hands.take(entry.id);
      focusFirst(host);
      break;
    case 'put':
      handBack(host, () => hands.put(entry.id, entry.route));
      break;
    case 'pick':
      callbacks.onPick(entry.id);
      break;
    case 'cancel':
      handBack(host, hands.cancel);
      break;
    case 'cap':
      if (isPort(host, entry.id)) callbacks.onPick(capId(entry.id));
      break;
    case 'coupler':
      coupleHere(host, entry.id);
      break;
    case 'tilt':
      callbacks.onTilt(act.degrees);
      break;
    case 'valve':
      callbacks.onValve(act.sixteenths);
  }
}

const isPort = (host: KeyboardHost, id: string): boolean => host.layout.ports.some((port) => port.id === id);

function focusFirst(host: KeyboardHost): void {
  const [first] = host.entries();
  if (first) host.twin.focus(first.key);
}

/** Empties the hand and returns focus to what was in it. */
function handBack(host: KeyboardHost, empty: () => void): void {
  const hand = host.hands.hand();
  empty();
  if (hand.doing === 'carrying') host.twin.focus(hand.item);
}

function goTo(host: KeyboardHost, entry: Entry, arrow: Arrow): void {
  const stops = host
    .entries()
    .map((e) => ({ id: e.key, kind: 'part' as const, at: middleOf(e), hit: e.hit }));
  const from = stops.find((stop) => stop.id === entry.key);
  const next = from && neighbour(stops, from, arrow);
  if (next) host.twin.focus(next.id);
}

const middleOf = ({ hit: [x, y, w, h] }: Entry): PointMm => [x + w / 2, y + h / 2];

/** K: open or shut the coupler that stands here, or put on the loose one that fits. */
function coupleHere(host: KeyboardHost, id: string): void {
  const { hands, callbacks, twin } = host;
  const hoses = host.frame().hoses.filter(hasCoupler);
  const onIt = hoses.find((hose) => hose.port !== null && (hose.port === id || couplerId(hose.id) === id));
  if (onIt) {
    callbacks.onCoupler(onIt.id);
    return;
  }
  const fits = hoses.find(
    (hose) => hose.port === null && callbacks.validTargets(couplerId(hose.id)).includes(id),
  );
  if (!fits || !isPort(host, id)) return;
  hands.take(couplerId(fits.id));
  hands.put(id);
  twin.focus(id);
}
