/**
 * A stretch of hose that lies in the way of a fan or a belt, or on hot metal: it is barred like a warning tape and
 * carries the triangle, so that shape tells it as well as colour.
 */
import { Container, Graphics, Sprite } from 'pixi.js';
import { measure, stationAt } from '../../layout/course';
import { warningSign } from '../drawing/gear/keepClear';
import type { HoseDanger } from '../gesture/hoseDanger';
import { showStamp } from '../stamps';
import type { SceneContext } from './sceneNode';

export interface DangerPaint {
  readonly view: Container;
  show(dangers: readonly HoseDanger[], widthMm: number): void;
}

const BAR_PITCH_MM = 17;
const SIGN_R_MM = 20;
/** A bar leans by this much along the hose. */
const LEAN_MM = 7;

export function dangerPaint(context: SceneContext): DangerPaint {
  const view = new Container();
  const bars = new Graphics();
  const signs: Sprite[] = [];
  view.addChild(bars);
  const signAt = (i: number): Sprite => {
    if (!signs[i]) signs.push(view.addChild(new Sprite()));
    return signs[i];
  };
  return {
    view,
    show(dangers, widthMm) {
      bars.clear();
      view.visible = dangers.length > 0;
      for (const sign of signs) sign.visible = false;
      const half = widthMm / 2 + 3;
      for (const [ink, width] of [
        ['white', 10],
        ['danger', 6.4],
      ] as const) {
        for (const { stretch } of dangers) barsAlong(bars, stretch, half);
        if (dangers.length > 0) bars.stroke({ color: context.palette()[ink], width, cap: 'round' });
      }
      dangers.forEach(({ stretch }, i) => {
        const [x, y] = stretch[Math.floor(stretch.length / 2)];
        const sign = signAt(i);
        sign.visible = true;
        showStamp(
          sign,
          context.stamps.get('hose-danger', () => warningSign(0, 0, SIGN_R_MM)),
          x,
          y,
        );
      });
    },
  };
}

function barsAlong(bars: Graphics, stretch: HoseDanger['stretch'], half: number): void {
  const course = measure(stretch);
  for (let along = BAR_PITCH_MM / 2; along <= course.lengthMm; along += BAR_PITCH_MM) {
    const { x, y, tx, ty } = stationAt(course, along);
    bars.moveTo(x - ty * half - tx * LEAN_MM, y + tx * half - ty * LEAN_MM);
    bars.lineTo(x + ty * half + tx * LEAN_MM, y - tx * half + ty * LEAN_MM);
  }
}
