import { describe, expect, it } from 'vitest';
import {
  emptyHand,
  type Hand,
  type HandEvent,
  handStep,
  type Intent,
  type Under,
} from '../../src/bay/gesture/handGesture';

const loose: Under = { id: 'coupler:low', takeable: true, from: null };
const onPort: Under = { id: 'coupler:low', takeable: true, from: 'port-b' };
const valid = (): readonly string[] => ['port-b', 'mat'];

/** Plays events from an empty hand; gives the hand and every intent on the way. */
function play(...events: readonly HandEvent[]): { hand: Hand; intents: Intent[] } {
  let hand = emptyHand();
  const intents: Intent[] = [];
  for (const event of events) {
    const step = handStep(hand, event);
    hand = step.hand;
    intents.push(...step.intents);
  }
  return { hand, intents };
}

const drag = (under: Under, over: string | null): HandEvent[] => [
  { kind: 'down', under, at: [0, 0] },
  { kind: 'move', at: [60, 0], valid },
  { kind: 'up', at: [60, 0], over, valid },
];

describe('dragging a coupler', () => {
  it('over a fitting it matches puts it there', () => {
    const { hand, intents } = play(...drag(loose, 'port-b'));
    expect(intents).toEqual([{ kind: 'drop', item: 'coupler:low', target: 'port-b' }]);
    expect(hand.doing).toBe('nothing');
  });

  it('over a fitting it does not match is told, and the coupler falls', () => {
    const { hand, intents } = play(...drag(loose, 'port-a'));
    expect(intents).toEqual([
      { kind: 'drop', item: 'coupler:low', target: 'port-a' },
      { kind: 'fall', item: 'coupler:low' },
    ]);
    expect(hand.doing).toBe('nothing');
  });

  it('let go over nothing falls and says nothing', () => {
    expect(play(...drag(loose, null)).intents).toEqual([{ kind: 'fall', item: 'coupler:low' }]);
  });

  it('pulled off its port and let go over nothing comes off', () => {
    expect(play(...drag(onPort, null)).intents).toEqual([
      { kind: 'drop', item: 'coupler:low', target: 'mat' },
      { kind: 'fall', item: 'coupler:low' },
    ]);
  });

  it('knows from the first move where it may go', () => {
    const { hand } = play({ kind: 'down', under: loose, at: [0, 0] }, { kind: 'move', at: [40, 0], valid });
    expect(hand).toMatchObject({
      doing: 'carrying',
      item: 'coupler:low',
      dragged: true,
      valid: ['port-b', 'mat'],
    });
  });

  it('is given up by cancel, whatever was going on', () => {
    const { hand, intents } = play(
      { kind: 'down', under: loose, at: [0, 0] },
      { kind: 'move', at: [40, 0], valid },
      { kind: 'cancel' },
    );
    expect(hand.doing).toBe('nothing');
    expect(intents).toEqual([]);
  });
});

describe('clicking source, then target', () => {
  const click = (under: Under | null, over: string | null): HandEvent[] => [
    { kind: 'down', under, at: [5, 5] },
    { kind: 'up', at: [6, 5], over, valid },
  ];

  it('means the same as dragging', () => {
    const { intents } = play(...click(loose, null), ...click(null, 'port-b'));
    expect(intents).toEqual(play(...drag(loose, 'port-b')).intents);
  });

  it('keeps the thing in the hand when the second click meets nothing', () => {
    const { hand, intents } = play(...click(loose, null), ...click(null, null));
    expect(hand).toMatchObject({ doing: 'carrying', item: 'coupler:low', dragged: false });
    expect(intents).toEqual([]);
  });

  it('on a coupler that stands on a port works its knob', () => {
    expect(play(...click(onPort, null)).intents).toEqual([{ kind: 'pick', id: 'coupler:low' }]);
  });

  it('on the can shows its form; a drag carries it', () => {
    const can: Under = { id: 'can', takeable: true, from: null };
    expect(play(...click(can, null))).toEqual({
      hand: { doing: 'nothing' },
      intents: [{ kind: 'pick', id: 'can' }],
    });
    expect(play(...drag(can, 'scale')).intents[0]).toEqual({ kind: 'drop', item: 'can', target: 'scale' });
  });

  it('on a part picks the part', () => {
    expect(play(...click({ id: 'battery', takeable: false, from: null }, null)).intents).toEqual([
      { kind: 'pick', id: 'battery' },
    ]);
  });

  it('on bare floor does nothing', () => {
    expect(play(...click(null, null))).toEqual({ hand: { doing: 'nothing' }, intents: [] });
  });
});

describe('taking and putting by key', () => {
  it('means the same as dragging', () => {
    const { intents } = play({ kind: 'take', under: loose, valid }, { kind: 'put', target: 'port-b' });
    expect(intents).toEqual(play(...drag(loose, 'port-b')).intents);
  });

  it('putting with an empty hand does nothing', () => {
    expect(play({ kind: 'put', target: 'port-b' }).intents).toEqual([]);
  });
});
