/** Hub plate of a compressor clutch: it stands apart while the clutch is open and turns with the pulley when engaged. */
import { Sprite } from 'pixi.js';
import type { Part } from '../../layout/layout';
import { clutchHub } from '../drawing/parts/clutchHub';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

/** Pictures of a turning plate, and how many are shown a second. */
const PHASES = 6;
const PHASES_PER_S = 14;

export function clutchNode(context: SceneContext, part: Part): SceneNode {
  const view = new Sprite();
  const edgeOn = part.kind === 'compressor-side';
  let engaged = false;
  let running = false;
  let phase = 0;
  const shown = (): void => {
    const step = engaged && running ? Math.floor(phase) % PHASES : 0;
    const draw = () => clutchHub(part, engaged, (step * 2 * Math.PI) / (3 * PHASES), step % 2);
    showStamp(view, context.stamps.get(`hub:${part.id}:${engaged}:${edgeOn ? step % 2 : step}`, draw));
  };
  return {
    view,
    show(frame) {
      engaged = frame.clutchEngaged;
      running = frame.engineRpm > 0;
      shown();
    },
    tick(seconds) {
      if (!engaged || !running || context.still) return false;
      const before = Math.floor(phase);
      phase = (phase + seconds * PHASES_PER_S) % (PHASES * 1000);
      if (Math.floor(phase) === before) return false;
      shown();
      return true;
    },
  };
}
