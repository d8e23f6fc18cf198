/** Where a session was opened from, if not from the shelf: the bar at the top has a way back there. */
import { createSignal } from 'solid-js';

const [wayBack, setWayBack] = createSignal<(() => void) | null>(null);

export { setWayBack, wayBack };
