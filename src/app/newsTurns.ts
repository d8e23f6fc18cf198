/**
 * Which picture of the screen brings which news of the session. Frames, which needles follow, come about thirty times a second
 * and never in two pictures running, so that hands have every other one to themselves. What is read as words comes five times a
 * second, and sooner after a hand did something: first a view that changed, then what the instruments say, each in a
 * picture of its own that is told of one before. On a slow machine words come as seldom as takes a share of its time.
 */
export interface Turn {
  readonly frame: boolean;
  readonly view: boolean;
  readonly words: boolean;
  /** One of the next pictures brings view or words. */
  readonly isTelling: boolean;
}

export interface NewsTurns {
  /** A frame or a view has come. */
  frameCame(): void;
  viewCame(): void;
  /** A hand was answered, or the clock changed its speed: nothing waits long. */
  hurry(): void;
  /** What the picture that begins at a time brings, ms. */
  next(nowMs: number): Turn;
  /** How long a picture with view or words took, ms. */
  took(ms: number): void;
  /** Something is still to be brought. */
  isWaiting(): boolean;
}

/** Least time between two that bring something: a little under two pictures of a screen that shows sixty a second, ms. */
const APART_MS = 28;
/** About one of them. */
const PICTURE_MS = 16;
/** Least time from words to the next; less after a hand did something. */
const [WORDS_MS, HURRIED_MS] = [200, 60] as const;
/** And how many times what they take. */
const [WORDS_TIMES, HURRIED_TIMES] = [12, 2] as const;
/** Words that are hurried after an answer: what it changed, and what the instruments make of it. */
const HURRIED = 2;
/** What the last ones say of how long they take; a machine that slept says nothing. */
const WEIGHT = 0.2;
const MOST_MS = 100;

export function newsTurns(): NewsTurns {
  let [hasFrame, hasView, hasWords] = [false, false, false];
  let planned: 'view' | 'words' | null = null;
  /** A view was brought, and not yet what goes with it. */
  let isHalf = false;
  let isRested = true;
  let [broughtMs, wordsMs] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let takesMs = 0;
  let hurried = 0;

  const isDue = (nowMs: number): boolean => {
    const [least, times] = hurried > 0 ? [HURRIED_MS, HURRIED_TIMES] : [WORDS_MS, WORDS_TIMES];
    return isHalf || nowMs - wordsMs >= Math.max(least, times * takesMs);
  };
  const plan = (nowMs: number): boolean => {
    if (planned !== null || !isRested || nowMs + PICTURE_MS - broughtMs < APART_MS || !isDue(nowMs))
      return false;
    if (hasView && !isHalf) planned = 'view';
    else if (hasWords) planned = 'words';
    return planned !== null;
  };
  const bring = (nowMs: number): Omit<Turn, 'isTelling'> => {
    const turn = { frame: hasFrame, view: planned === 'view', words: planned === 'words' };
    planned = null;
    hasFrame = false;
    if (turn.view) [hasView, hasWords, isHalf] = [false, true, true];
    if (turn.words) {
      [hasWords, isHalf, wordsMs] = [false, false, nowMs];
      hurried = Math.max(0, hurried - 1);
    }
    return turn;
  };
  return {
    frameCame() {
      hasFrame = true;
      hasWords = true;
    },
    viewCame() {
      hasView = true;
    },
    hurry() {
      hurried = HURRIED;
    },
    next(nowMs) {
      const isFree = isRested && nowMs - broughtMs >= APART_MS && (hasFrame || planned !== null);
      const turn = isFree ? bring(nowMs) : { frame: false, view: false, words: false };
      isRested = !isFree;
      if (isFree) broughtMs = nowMs;
      return { ...turn, isTelling: plan(nowMs) };
    },
    took(ms) {
      takesMs += (Math.min(MOST_MS, ms) - takesMs) * WEIGHT;
    },
    isWaiting: () => hasFrame || hasView || hasWords || !isRested,
  };
}
