/** The shelf is left once what comes next can be shown; where that cannot be fetched it stays, and says so. */
import { createSignal } from 'solid-js';

/** So long the shelf just stands; then it is said that something loads. */
const SLOW_MS = 400;

export function leavingShelf() {
  const [isHeld, setHeld] = createSignal(false);
  const [isSlow, setSlow] = createSignal(false);
  let isLeaving = false;
  const leave = async (fetched: Promise<unknown>, go: () => unknown): Promise<void> => {
    if (isLeaving) return;
    isLeaving = true;
    setHeld(false);
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    try {
      await fetched;
      await go();
    } catch (error) {
      console.warn(error);
      setHeld(true);
    } finally {
      clearTimeout(timer);
      setSlow(false);
      isLeaving = false;
    }
  };
  return { leave, isHeld, isSlow };
}
