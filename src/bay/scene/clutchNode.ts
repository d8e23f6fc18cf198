/**
 * Hub plate of a compressor clutch: it stands apart while the clutch is open and turns with the pulley when engaged, slower
 * where it slips. Edge-on the heads of its rivets come up, cross the plate and go under.
 */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { Part } from '../../layout/layout';
import { clutchHub } from '../drawing/parts/clutchHub';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

/** Pictures of a turning plate, and how many are shown a second. */
const PHASES = 6;
const PHASES_PER_S = 14;
const RIVETS = 3;
const RIVET_R_MM = 42;

export function clutchNode(context: SceneContext, part: Part): SceneNode {
  const view = new Container();
  const plate = new Sprite();
  const rivets = new Graphics();
  view.addChild(plate, rivets);
  const edgeOn = part.kind === 'compressor-side';
  let engaged = false;
  let running = false;
  let speed = 1;
  let phase = 0;
  const shown = (): void => {
    const step = engaged && running ? Math.floor(phase) % PHASES : 0;
    const draw = () => clutchHub(part, engaged, (step * 2 * Math.PI) / (3 * PHASES), step % 2);
    showStamp(plate, context.stamps.get(`hub:${part.id}:${engaged}:${edgeOn ? step % 2 : step}`, draw));
    rivets.clear();
    if (edgeOn && engaged) drawRivets();
  };
  const drawRivets = (): void => {
    for (let i = 0; i < RIVETS; i++) {
      const angle = (phase / PHASES + i) * ((2 * Math.PI) / RIVETS);
      if (Math.sin(angle) < 0) continue;
      const y = part.at[1] + Math.cos(angle) * RIVET_R_MM;
      rivets.moveTo(part.at[0] - 12, y).lineTo(part.at[0] - 5, y);
    }
    rivets.stroke({ color: context.palette()['mill-d'], width: 7, cap: 'round' });
  };
  return {
    view,
    show(frame) {
      engaged = frame.clutchEngaged;
      running = frame.engineRpm > 0;
      speed = frame.hubSpeed;
      shown();
    },
    tick(seconds) {
      if (!engaged || !running || context.still) return false;
      const before = Math.floor(phase);
      phase = (phase + seconds * PHASES_PER_S * speed) % (PHASES * 1000);
      if (!edgeOn && Math.floor(phase) === before) return false;
      shown();
      return true;
    },
  };
}
