/**
 * Has a player follow a session as long as the owner lives: lasting noises while its clock runs and the page is seen (a
 * hidden page holds the clock), moments as they come.
 */
import { createEffect, createSignal, on, onCleanup } from 'solid-js';
import type { Loudness } from '../Menu';
import { newlyHappened } from '../newlyHappened';
import type { SessionModel } from '../sessionModel';
import { lastingNow } from './lastingNow';
import { momentOf } from './momentOf';
import { soundPlayer } from './player';

const VOLUME: Readonly<Record<Loudness, number>> = { off: 0, quiet: 0.15, medium: 0.4, loud: 0.9 };

export function followSound(session: SessionModel, loudness: () => Loudness): void {
  const player = soundPlayer();
  onCleanup(player.dispose);
  createEffect(() => player.setVolume(VOLUME[loudness()]));
  const [isHidden, setHidden] = createSignal(document.hidden);
  const heed = (): void => void setHidden(document.hidden);
  document.addEventListener('visibilitychange', heed);
  onCleanup(() => document.removeEventListener('visibilitychange', heed));
  const isRunning = (): boolean =>
    !isHidden() && (session.clock().lapse > 0 || session.clock().runningOn !== null);
  createEffect(() => player.lasting(isRunning() && loudness() !== 'off' ? lastingNow(session) : []));
  createEffect(
    on(session.view, (now, before) => {
      if (!before) return;
      for (const { id } of newlyHappened(before, now)) {
        const sound = momentOf(id);
        if (sound) player.moment(sound);
      }
    }),
  );
}
