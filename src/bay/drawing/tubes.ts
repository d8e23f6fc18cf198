/**
 * Tubes and hoses. One tube of width w is five strokes of the same path: edge, body, shade, light, glint; the last
 * three are shifted in picture space, so the light stays true round every bend.
 */
import type { Station } from '../../layout/course';
import { chain, type Matrix, move, turn } from './matrix';
import { across } from './paints';
import { roundRect } from './paths';
import { type Drawing, fill, mm, placed, type StrokeStyle, shape, stroke } from './record';

export function tube(d: string, w: number, m: string, cap: 'butt' | 'round' = 'butt'): Drawing {
  const style: StrokeStyle = { cap, join: 'round' };
  const shifted = (share: number): { readonly matrix: Matrix } => ({
    matrix: move(mm(w * share), mm(w * share)),
  });
  return [
    stroke(d, `${m}-d`, mm(w + 3.4), 1, style),
    stroke(d, `${m}-b`, w, 1, style),
    { ...stroke(d, `${m}-c`, mm(w * 0.46), 0.95, style), ...shifted(0.17) },
    { ...stroke(d, `${m}-a`, mm(w * 0.42), 1, style), ...shifted(-0.09) },
    { ...stroke(d, `${m}-h`, mm(w * 0.15), 0.95, style), ...shifted(-0.15) },
  ];
}

/** Frame at a station with its x across the tube; turned so that the lit side of a fitting faces the lamp. */
export function acrossFrame(at: Station): Matrix {
  const towardLamp = -at.ty + at.tx >= 0;
  const [x, y] = towardLamp ? [-at.ty, at.tx] : [at.ty, -at.tx];
  return chain(move(mm(at.x), mm(at.y)), turn(mm((Math.atan2(y, x) * 180) / Math.PI)));
}

/** Frame at a station with its x along the tube. */
export const alongFrame = (at: Station): Matrix =>
  chain(move(mm(at.x), mm(at.y)), turn(mm((Math.atan2(at.ty, at.tx) * 180) / Math.PI)));

/** A ring round a tube, with grooves at shares of its length. */
export function collar(
  at: Station,
  length: number,
  w: number,
  m: string,
  grooves: readonly number[] = [],
): Drawing {
  const drawing: Drawing = [
    shape(roundRect(-w / 2, -length / 2, w, length, 3), across(m), `${m}-d`, 1.8),
    ...grooves.flatMap((share) => [
      stroke(`M${mm(-w / 2)} ${mm(share * length)}H${mm(w / 2)}`, `${m}-d`, 1.8, 0.65),
      stroke(`M${mm(-w / 2 + 2)} ${mm(share * length + 2)}H${mm(w * 0.1)}`, `${m}-h`, 1.4, 0.8),
    ]),
  ];
  return placed(drawing, acrossFrame(at));
}

export function hexNut(at: Station, length: number, w: number, m = 'mill'): Drawing {
  const half = length / 2;
  const drawing: Drawing = [
    fill(roundRect(-w / 2, -half, w, length, 2.5), `${m}-b`),
    fill(roundRect(-w / 2, -half, w * 0.3, length, 2.5), `${m}-a`),
    fill(roundRect(w * 0.22, -half, w * 0.28, length, 2.5), `${m}-c`),
    stroke(`M${mm(-w * 0.2)} ${-half}V${half}M${mm(w * 0.22)} ${-half}V${half}`, `${m}-d`, 1.4, 0.6),
    stroke(roundRect(-w / 2, -half, w, length, 2.5), `${m}-d`, 1.8),
  ];
  return placed(drawing, acrossFrame(at));
}
