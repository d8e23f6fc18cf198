/** What the scene is put on: a handful of strokes, fills and stamps, in the order they are told. Pictures are known by number. */
export interface Inks {
  /** From the numbers that follow to device pixels, as a canvas has them: x' = a x + c y + tx, y' = b x + d y + ty. */
  at(a: number, b: number, c: number, d: number, tx: number, ty: number): void;
  /** Share of 1 that covers. */
  alpha(share: number): void;
  /** Of fills and strokes, #rrggbb. */
  colour(hex: string): void;
  line(width: number, cap: CanvasLineCap, join: CanvasLineJoin): void;
  begin(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  quadraticTo(aboutX: number, aboutY: number, x: number, y: number): void;
  closed(): void;
  circle(x: number, y: number, radius: number): void;
  roundRect(x: number, y: number, width: number, height: number, radius: number): void;
  fill(): void;
  stroke(): void;
  stamp(picture: number, x: number, y: number, width: number, height: number): void;
}
