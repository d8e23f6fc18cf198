/** Runs the cars of the text that was last without errors, in slices: a newer wish takes the place of an older one. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { loadLayout } from '../../layout/layouts';
import { loadVehicle } from '../../loop/car/vehicles';
import { loadRefrigerant, REFRIGERANT_IDS } from '../../refrigerant/fluids';
import type { CarWay } from './carRun';
import { type CarPiece, carStory } from './carStory';

export type ToCar =
  | { readonly type: 'run'; readonly serial: number; readonly data: ScenarioData; readonly way: CarWay }
  | { readonly type: 'stop' };

export type FromCar =
  | { readonly type: 'piece'; readonly serial: number; readonly piece: CarPiece }
  | { readonly type: 'done'; readonly serial: number }
  | { readonly type: 'failed'; readonly serial: number; readonly reason: string };

const SLICE_MS = 40;
let newest = 0;

const post = (message: FromCar): void => self.postMessage(message);

async function run(serial: number, data: ScenarioData, way: CarWay): Promise<void> {
  await Promise.all([
    loadVehicle(data.vehicle),
    loadLayout(data.vehicle),
    ...REFRIGERANT_IDS.map(loadRefrigerant),
  ]);
  const story = carStory(data, way);
  while (newest === serial) {
    const until = performance.now() + SLICE_MS;
    while (performance.now() < until) {
      const { done, value } = story.next();
      if (done) return post({ type: 'done', serial });
      if (value) post({ type: 'piece', serial, piece: value });
    }
    await new Promise((resume) => setTimeout(resume, 0));
  }
}

self.onmessage = ({ data: message }: MessageEvent<ToCar>): void => {
  newest = message.type === 'run' ? message.serial : 0;
  if (message.type !== 'run') return;
  const { serial, data, way } = message;
  run(serial, data, way).catch((error: unknown) => {
    post({ type: 'failed', serial, reason: error instanceof Error ? error.message : String(error) });
  });
};
