/** A transform attribute as a matrix: translate, rotate and matrix, one or several, the last applied first. */
import { chain, type Matrix, move, turn } from '../../../src/bay/drawing/matrix';
import type { Refuse } from './partError.ts';

const STEP = /\s*([a-z]+)\(([^)]*)\)\s*/gy;

export function transformOf(text: string, offset: number, refuse: Refuse): Matrix {
  const steps: Matrix[] = [];
  let end = 0;
  for (const [whole, name, inside] of text.matchAll(STEP)) {
    const n = (inside as string)
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    if (n.some((value) => !Number.isFinite(value)))
      refuse(offset + end, `"${whole.trim()}" holds no numbers`);
    const made = matrixOf(name as string, n);
    steps.push(made ?? refuse(offset + end, `transform "${whole.trim()}" is not known here`));
    end += whole.length;
  }
  if (end < text.length || steps.length === 0) refuse(offset + end, 'not a transform');
  return chain(...steps);
}

function matrixOf(name: string, n: readonly number[]): Matrix | null {
  if (name === 'translate' && n.length === 2) return move(n[0], n[1]);
  if (name === 'rotate' && (n.length === 1 || n.length === 3)) return turn(n[0], n[1], n[2]);
  return name === 'matrix' && n.length === 6 ? (n as unknown as Matrix) : null;
}
