/** The one shape of everything in the scene: it shows frames, is painted anew after a change of size or theme, may move. */
import type { Container } from 'pixi.js';
import type { Layout } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import type { Palette } from '../drawing/palette';
import type { Stamps } from '../stamps';

export interface SceneNode {
  readonly view: Container;
  show(frame: BayFrame): void;
  /** Time goes on; true where the picture changed. */
  tick?(seconds: number): boolean;
}

/** What every node may ask. Palette and stamps change with theme and size; nodes are shown again after that. */
export interface SceneContext {
  readonly layout: Layout;
  readonly stamps: Stamps;
  palette(): Palette;
  readonly still: boolean;
}
