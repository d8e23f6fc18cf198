/** A texture that stands for a picture the paint desk keeps; it is thrown away there when the texture is destroyed. */
import { Texture, TextureSource } from 'pixi.js';
import type { PictureOrder } from './ink/deskMessages';
import type { Desk } from './ink/startDesk';

interface Kept {
  readonly picture: number;
}

export function pictureTexture(desk: Desk, order: PictureOrder): Texture {
  const picture = desk.keep(order);
  const { width, height } = order;
  const source = new TextureSource<Kept>({ resource: { picture }, width, height });
  source.once('destroy', () => desk.drop(picture));
  return new Texture({ source });
}

/** The picture's number at the desk; null where a texture shows none. */
export const pictureOf = (texture: Texture): number | null =>
  (texture.source.resource as Kept | null)?.picture ?? null;
