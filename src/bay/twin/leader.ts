/** A line with a light casing from a thing, where a dot is, to what is said or shown of it. */
import type { PointMm } from '../../layout/layout';

export interface Leader {
  readonly element: SVGSVGElement;
  show(from: PointMm, to: PointMm): void;
}

export function createLeader(): Leader {
  const make = <K extends 'svg' | 'line' | 'circle'>(name: K): SVGElementTagNameMap[K] =>
    document.createElementNS('http://www.w3.org/2000/svg', name);
  const element = make('svg');
  const lines = [make('line'), make('line')];
  const dot = make('circle');
  element.setAttribute('class', 'bay-leader');
  element.setAttribute('aria-hidden', 'true');
  dot.setAttribute('r', '4');
  element.append(...lines, dot);
  const put = (target: SVGElement, values: Readonly<Record<string, number>>): void => {
    for (const [name, value] of Object.entries(values)) target.setAttribute(name, value.toFixed(0));
  };
  return {
    element,
    show([x1, y1], [x2, y2]) {
      for (const line of lines) put(line, { x1, y1, x2, y2 });
      put(dot, { cx: x1, cy: y1 });
    },
  };
}
