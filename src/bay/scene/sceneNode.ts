/** The one shape of everything in the scene: it shows frames, is painted anew after a change of size or theme, may move. */
import type { Container } from 'pixi.js';
import type { Layout } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import type { Palette } from '../drawing/palette';
import type { Stamps } from '../stamps';

export interface SceneNode {
  readonly view: Container;
  /** Shows a frame; `fresh` where size or theme changed, so that nothing painted before is good any more. */
  show(frame: BayFrame, fresh: boolean): void;
  /** Time goes on; true where the picture changed. */
  tick?(seconds: number): boolean;
}

/** What every node may ask. Palette and stamps change with theme and size; nodes are shown again after that. */
export interface SceneContext {
  readonly layout: Layout;
  readonly stamps: Stamps;
  palette(): Palette;
  /** Left edge of what is seen, mm: where hoses leave for their gauges. */
  leftMm(): number;
  /** Something came to rest at a place of its own accord: whoever shows where things are looks again. */
  rested(): void;
  readonly still: boolean;
}
