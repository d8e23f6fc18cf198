/**
 * Colours and gradients of a part file. A colour is a palette token with its light value as what a viewer shows,
 * `var(--alu-a, #f7fafb)`; a gradient spans the filled shape's own box.
 */
import type { Gradient, Stop } from '../../../src/bay/drawing/paints';
import { attributesOf, type Taken } from './attributes.ts';
import type { Refuse } from './partError.ts';
import type { XmlElement } from './readXml.ts';

const TOKEN = /^var\(--([a-z]+(?:-[a-z0-9]+)*), ?(#[0-9a-f]{6})\)$/;
const REFERENCE = /^url\(#([a-z][a-z0-9-]*)\)$/;

export interface Paints {
  /** Light value of every token that was named, as the file says it. */
  readonly shown: ReadonlyMap<string, string>;
  ink(text: string, offset: number): string;
  paint(text: string, offset: number): string | Gradient;
  define(defs: XmlElement): void;
  /** Refuses a gradient that nothing is filled with. */
  done(): void;
}

export function createPaints(refuse: Refuse): Paints {
  const gradients = new Map<string, { readonly gradient: Gradient; readonly offset: number }>();
  const unused = new Set<string>();
  const shown = new Map<string, string>();
  const ink = (text: string, offset: number): string => {
    const [, token, light] = TOKEN.exec(text) ?? refuse(offset, `"${text}" is not var(--token, #light)`);
    if ((shown.get(token as string) ?? light) !== light)
      refuse(offset, `--${token} was ${shown.get(token as string)} before`);
    shown.set(token as string, light as string);
    return token as string;
  };
  const stopOf = (element: XmlElement): Stop => {
    if (element.name !== 'stop') refuse(element.offset, `<${element.name}> in a gradient`);
    const taken = attributesOf(element, refuse);
    const at = taken.share('offset');
    const made = ink(taken.text('stop-color') ?? '', taken.at('stop-color'));
    const alpha = taken.share('stop-opacity');
    taken.done();
    return alpha < 1 ? { at, ink: made, alpha } : { at, ink: made };
  };
  const shapeOf = (element: XmlElement, taken: Taken): Gradient => {
    const of = (name: string): number => taken.needed(name);
    const stops = element.children.map(stopOf);
    if (element.name === 'linearGradient')
      return { kind: 'linear', line: [of('x1'), of('y1'), of('x2'), of('y2')], stops };
    if (element.name === 'radialGradient')
      return { kind: 'radial', centre: [of('cx'), of('cy')], radius: of('r'), stops };
    return refuse(element.offset, `<${element.name}> is not known in <defs>`);
  };
  const gradientOf = (element: XmlElement): void => {
    const taken = attributesOf(element, refuse);
    const id = taken.text('id') ?? refuse(element.offset, `<${element.name}> needs "id"`);
    if (gradients.has(id)) refuse(taken.at('id'), `gradient "${id}" stands twice`);
    const gradient = shapeOf(element, taken);
    taken.done();
    if (gradient.stops.length < 2) refuse(element.offset, `gradient "${id}" needs two stops or more`);
    gradients.set(id, { gradient, offset: element.offset });
    unused.add(id);
  };
  return {
    shown,
    ink,
    paint(text, offset) {
      const id = REFERENCE.exec(text)?.[1];
      if (id === undefined) return ink(text, offset);
      const found =
        gradients.get(id) ??
        refuse(offset, `no gradient "${id}"; there is ${[...gradients.keys()].join(', ')}`);
      unused.delete(id);
      return found.gradient;
    },
    define(defs) {
      for (const child of defs.children) gradientOf(child);
    },
    done() {
      for (const id of unused)
        refuse(gradients.get(id)?.offset ?? 0, `nothing is filled with gradient "${id}"`);
    },
  };
}
