/** Takes the attributes of one element, by name and form; what nobody took in the end is refused. */
import type { Refuse } from './partError.ts';
import type { XmlElement } from './readXml.ts';

export interface Taken {
  readonly offset: number;
  text(name: string): string | undefined;
  /** Where the value of an attribute begins; of the element where there is none. */
  at(name: string): number;
  number(name: string): number | undefined;
  needed(name: string): number;
  share(name: string): number;
  oneOf<T extends string>(name: string, choices: readonly T[]): T | undefined;
  /** Refuses what was not taken. */
  done(): void;
}

const NUMBER = /^-?(?:\d+\.?\d*|\.\d+)$/;

export function attributesOf(element: XmlElement, refuse: Refuse): Taken {
  const left = new Set(element.attributes.keys());
  const text = (name: string): string | undefined => {
    left.delete(name);
    return element.attributes.get(name)?.value;
  };
  const at = (name: string): number => element.attributes.get(name)?.offset ?? element.offset;
  const number = (name: string): number | undefined => {
    const value = text(name);
    if (value === undefined) return undefined;
    return NUMBER.test(value) ? Number(value) : refuse(at(name), `${name}="${value}" is not a number`);
  };
  return {
    offset: element.offset,
    text,
    at,
    number,
    needed: (name) => number(name) ?? refuse(element.offset, `<${element.name}> needs "${name}"`),
    share(name) {
      const value = number(name) ?? 1;
      return value >= 0 && value <= 1 ? value : refuse(at(name), `${name} lies between 0 and 1`);
    },
    oneOf(name, choices) {
      const value = text(name);
      if (value === undefined) return undefined;
      const found = choices.find((choice) => choice === value);
      return found ?? refuse(at(name), `${name}="${value}"; there is ${choices.join(', ')}`);
    },
    done() {
      for (const name of left)
        refuse(at(name), `<${element.name}> takes no attribute "${name}" in a part file`);
    },
  };
}
