/** A way that is inked anew in every picture, as a hose while it moves: points and bends in a row of numbers. */
import type { Inks } from './inks';

const [MOVE, LINE, BEND, CLOSE] = [0, 1, 2, 3] as const;

export class Way {
  readonly #steps: number[] = [];

  moveTo(x: number, y: number): void {
    this.#steps.push(MOVE, x, y);
  }

  lineTo(x: number, y: number): void {
    this.#steps.push(LINE, x, y);
  }

  quadraticTo(aboutX: number, aboutY: number, x: number, y: number): void {
    this.#steps.push(BEND, aboutX, aboutY, x, y);
  }

  closed(): void {
    this.#steps.push(CLOSE);
  }

  trace(ink: Inks): void {
    const steps = this.#steps;
    for (let i = 0; i < steps.length; ) {
      const [x, y] = [steps[i + 1], steps[i + 2]];
      switch (steps[i]) {
        case MOVE:
          ink.moveTo(x, y);
          i += 3;
          break;
        case LINE:
          ink.lineTo(x, y);
          i += 3;
          break;
        case BEND:
          ink.quadraticTo(x, y, steps[i + 3], steps[i + 4]);
          i += 5;
          break;
        default:
          ink.closed();
          i += 1;
      }
    }
  }
}
