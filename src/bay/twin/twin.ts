/**
 * The twin in the document: a button or slider over every thing of the picture, at least 44 px to a side, in Tab order.
 * It gives the bay focus, names and keys; the pointer goes through to the same gestures below.
 */
import type { Camera } from '../camera';
import type { Entry } from './entries';

export interface Twin {
  readonly root: HTMLElement;
  show(entries: readonly Entry[], camera: Camera): void;
  focus(key: string): void;
  entryOf(element: EventTarget | null): Entry | null;
}

const LEAST_PX = 44;

export function createTwin(label: string): Twin {
  const root = document.createElement('div');
  root.className = 'bay-twin';
  root.setAttribute('role', 'group');
  root.setAttribute('aria-label', label);
  const elements = new Map<string, HTMLElement>();
  const entries = new Map<HTMLElement, Entry>();
  return {
    root,
    show(list, camera) {
      const focused =
        document.activeElement instanceof HTMLElement ? entries.get(document.activeElement)?.key : undefined;
      const kept = new Set(list.map((entry) => entry.key));
      for (const [key, element] of elements) {
        if (kept.has(key)) continue;
        entries.delete(element);
        elements.delete(key);
        element.remove();
      }
      let before: Element | null = root.firstElementChild;
      for (const entry of list) {
        const element = elements.get(entry.key) ?? make(entry);
        elements.set(entry.key, element);
        entries.set(element, entry);
        relabel(element, entry);
        position(element, entry, camera);
        if (element !== before) root.insertBefore(element, before);
        else before = before.nextElementSibling;
      }
      if (focused !== undefined && kept.has(focused) && elements.get(focused) !== document.activeElement)
        elements.get(focused)?.focus({ preventScroll: true });
    },
    focus(key) {
      elements.get(key)?.focus({ preventScroll: true });
    },
    entryOf(element) {
      return element instanceof HTMLElement ? (entries.get(element) ?? null) : null;
    },
  };
}

function make(entry: Entry): HTMLElement {
  if (!entry.slider) {
    const button = document.createElement('button');
    button.type = 'button';
    return button;
  }
  const slider = document.createElement('div');
  slider.setAttribute('role', 'slider');
  slider.setAttribute('aria-valuemin', '0');
  return slider;
}

function relabel(element: HTMLElement, entry: Entry): void {
  set(element, 'aria-label', entry.label);
  set(element, 'data-target', entry.id);
  set(element, 'data-takeable', String(entry.takeable));
  set(element, 'tabindex', '0');
  if (!entry.slider) return;
  set(element, 'aria-valuemax', String(entry.slider.max));
  set(element, 'aria-valuenow', String(entry.slider.now));
  set(element, 'aria-valuetext', entry.slider.text);
}

function set(element: HTMLElement, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

/** What was written last, so that an element is left alone where it stays. */
const placed = new WeakMap<HTMLElement, string>();

function position(element: HTMLElement, { hit, rank }: Entry, { x: atX, y: atY, scale }: Camera): void {
  const [x, y, w, h] = hit;
  const width = Math.max(LEAST_PX, w * scale);
  const height = Math.max(LEAST_PX, h * scale);
  const left = (x + w / 2 - atX) * scale - width / 2;
  const top = (y + h / 2 - atY) * scale - height / 2;
  const [l, t, wide, high] = [left, top, width, height].map((px) => `${px.toFixed(1)}px`);
  const style = `left:${l};top:${t};width:${wide};height:${high};z-index:${rank}`;
  if (placed.get(element) === style) return;
  placed.set(element, style);
  element.style.cssText = style;
}
