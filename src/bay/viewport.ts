/** What of the bay the host shows now: its size, how near, and where; changed by resizing, zooming and moving. */
import type { Layout, PointMm } from '../layout/layout';
import type { ZoomStep } from './bayApi';
import {
  type Camera,
  COVER_LEVEL,
  cameraFor,
  type HostSize,
  levelAfter,
  levelNear,
  openingLevel,
  toBay,
} from './camera';

export interface Viewport {
  camera(): Camera;
  size(): HostSize;
  /** Near enough that there is something to move to, or moved already. */
  canMove(): boolean;
  /** Looks at the host's size; false where it has not changed. */
  resized(): boolean;
  zoom(step: ZoomStep): void;
  /** How far the picture can go of a way in screen pixels: it is held at its edges. */
  held(dx: number, dy: number): PointMm;
  /** Moves the picture by screen pixels. */
  move(dx: number, dy: number): void;
  /** Takes the step nearest to the scale two fingers left, with what lay in the middle still there. */
  pinch(factor: number, about: PointMm, by: PointMm): void;
}

export function createViewport(host: HTMLElement, layout: Layout): Viewport {
  let size = sizeOf(host);
  let level = openingLevel(size);
  let centre: PointMm | null = null;
  let camera = cameraFor(layout, size, level, centre);
  const look = (): void => {
    camera = cameraFor(layout, size, level, centre);
  };
  const moved = (dx: number, dy: number): PointMm =>
    toBay(camera, [size.width / 2 - dx, size.height / 2 - dy]);
  return {
    camera: () => camera,
    size: () => size,
    canMove: () => level > COVER_LEVEL || centre !== null,
    resized() {
      const now = sizeOf(host);
      if (now.width === size.width && now.height === size.height) return false;
      if (openingLevel(now) !== openingLevel(size)) level = openingLevel(now);
      size = now;
      look();
      return true;
    },
    zoom(step) {
      level = levelAfter(level, step);
      centre = null;
      look();
    },
    held(dx, dy) {
      const to = cameraFor(layout, size, level, moved(dx, dy));
      return [(camera.x - to.x) * camera.scale, (camera.y - to.y) * camera.scale];
    },
    move(dx, dy) {
      centre = moved(dx, dy);
      look();
    },
    pinch(factor, [x, y], [dx, dy]) {
      const middle = (half: number, about: number, by: number): number =>
        about + (half - about - by) / factor;
      centre = toBay(camera, [middle(size.width / 2, x, dx), middle(size.height / 2, y, dy)]);
      level = levelNear(layout, size, camera.scale * factor);
      look();
    },
  };
}

const sizeOf = (host: HTMLElement): HostSize => ({ width: host.clientWidth, height: host.clientHeight });
