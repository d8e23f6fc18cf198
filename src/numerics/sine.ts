/**
 * Sine and cosine with the same bits in every engine: reduction by multiples of pi/2 held in three parts (Cody and
 * Waite), then the kernels of the published FDLIBM method (Sun Microsystems, k_sin.c, k_cos.c, 1993).
 * Error under 1 ulp or 1e-16 for |x| up to 1e5 rad, which is far more than any angle here.
 */
const INVERSE_HALF_PI = 6.36619772367581382433e-1;
const HALF_PI_1 = 1.57079632673412561417;
const HALF_PI_2 = 6.0771005063039659766e-11;
const HALF_PI_3 = 2.0222662487111664558e-21;
const HALF_PI_3_TAIL = 8.47842766036889956997e-32;

export function sin(x: number): number {
  return quadrant(x, 0);
}

export function cos(x: number): number {
  return quadrant(x, 1);
}

function quadrant(x: number, shift: number): number {
  const turns = Math.floor(x * INVERSE_HALF_PI + 0.5);
  let rest = x - turns * HALF_PI_1;
  const middle = turns * HALF_PI_2;
  const first = rest;
  rest = first - middle;
  const tail = turns * HALF_PI_3 - (first - rest - middle);
  const high = rest - tail;
  const low = rest - high - tail - turns * HALF_PI_3_TAIL;
  const n = turns + shift;
  const which = n - 4 * Math.floor(n / 4);
  const value = which % 2 === 0 ? kernelSin(high, low) : kernelCos(high, low);
  return which < 2 ? value : -value;
}

function kernelSin(x: number, low: number): number {
  const z = x * x;
  const v = z * x;
  const r =
    8.33333333332248946124e-3 +
    z *
      (-1.98412698298579493134e-4 +
        z * (2.75573137070700676789e-6 + z * (-2.50507602534068634195e-8 + z * 1.58969099521155010221e-10)));
  return x - (z * (0.5 * low - v * r) - low + v * 1.66666666666666324348e-1);
}

function kernelCos(x: number, low: number): number {
  const z = x * x;
  const r =
    z *
    (4.16666666666666019037e-2 +
      z *
        (-1.38888888888741095749e-3 +
          z *
            (2.48015872894767294178e-5 +
              z *
                (-2.75573143513906633035e-7 +
                  z * (2.0875723212981748279e-9 + z * -1.13596475577881948265e-11)))));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * low));
}
