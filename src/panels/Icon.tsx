/** Icons on a 24 grid, 1.75 stroke, round ends, no fill. They stand beside words, never for them, so they are hidden from speech. */
import type { JSX } from 'solid-js';

const PATHS = {
  more: 'M6 12h.01M12 12h.01M18 12h.01',
  runon: 'M4 12h11M11 7l5 5-5 5M20 6v12',
  zin: 'M12 6v12M6 12h12',
  zout: 'M6 12h12',
  fit: 'M5 9V5h4M15 5h4v4M19 15v4h-4M9 19H5v-4',
  doc: 'M6 3h9l4 4v14H6zM15 3v4h4M9 12h7M9 16h7M9 8h3',
  text: 'M4 6h16M4 11h16M4 16h10',
  can: 'M8 7h8v13a1 1 0 0 1-1 1H9a1 1 0 0 1-1-1zM9 7l1-3h4l1 3M8 11h8',
  hose: 'M4 5v4a5 5 0 0 0 10 0V8a3 3 0 0 1 6 0v11M3 5h2M18.5 19h3',
  gauges:
    'M8 9a4.5 4.5 0 1 0 0 .01M8 9l2-2M16 9m-4.5 0a4.5 4.5 0 1 0 9 0 4.5 4.5 0 1 0-9 0M16 9l2-2M8 13.5v6M12 17.5v3M16 13.5v6M8 17.5h8',
  therm: 'M10 14V5a2 2 0 0 1 4 0v9a4 4 0 1 1-4 0zM12 10v7',
  clamp: 'M5 19l6-8M11 11a4 4 0 1 1 5 5M16 16l3 3M8 20h4',
  scale: 'M4 9h16l-1.5 11h-13zM12 9V5M8 5h8M9.5 14a2.6 2.6 0 0 1 5 0',
  goggles: 'M3 10c0-2 2-3 4-3h10c2 0 4 1 4 3v3c0 2-1.5 3-3.5 3S14 15 12 13c-2 2-3 3-5.5 3S3 15 3 13z',
  glove:
    'M8 21v-5l-3-4 1.5-1.5L9 13V5.5a1.2 1.2 0 0 1 2.4 0V10 4.5a1.2 1.2 0 0 1 2.4 0V10 5.5a1.2 1.2 0 0 1 2.4 0V15a5 5 0 0 1-1.2 3v3z',
  overall: 'M9 4h6l3 3-2 3v10h-3v-6h-2v6H8V10L6 7zM12 4v6',
  tube: 'M8 3h8M9.5 3v14a2.5 2.5 0 0 0 5 0V3M9.5 11h5',
  kit: 'M4 9h16v10H4zM9 9V6h6v3M4 13h16M11 12v3h2v-3',
  fan: 'M12 12m-1.8 0a1.8 1.8 0 1 0 3.6 0 1.8 1.8 0 1 0-3.6 0M12 10c-1-5 3-6 4-5s0 4-3 5.5M13.8 13c4.5-2 6.5 1.5 6 3s-4 1-6-1.5M10.5 13.5c-3 4-6.5 2-6.8.5S7 11 10.2 11.5',
  door: 'M4 20V6h16v14M7 20V9h10v11M7 12h10M7 15h10',
  key: 'M14 10a4.5 4.5 0 1 0-4.3 4.5L11 16h2v2h2v2h4v-3z',
  eye: 'M2.5 12S6 6 12 6s9.5 6 9.5 6-3.5 6-9.5 6-9.5-6-9.5-6zM12 12m-2.5 0a2.5 2.5 0 1 0 5 0 2.5 2.5 0 1 0-5 0',
  chart: 'M4 4v16h16M7 15l4-5 3 3 5-7',
  clock: 'M12 12m-8.5 0a8.5 8.5 0 1 0 17 0 8.5 8.5 0 1 0-17 0M12 7v5l3.5 2',
  ff: 'M4 6l7 6-7 6zM12 6l7 6-7 6z',
  pause: 'M8 5v14M16 5v14',
  help: 'M9 9a3 3 0 1 1 4.5 2.6c-1 .6-1.5 1.2-1.5 2.4M12 17.5v.2',
  menu: 'M4 7h16M4 12h16M4 17h16',
  tick: 'M5 12.5l4.5 4.5L19 7',
  cross: 'M6 6l12 12M18 6L6 18',
  minus: 'M5 12h14',
  plus: 'M12 5v14M5 12h14',
  back: 'M19 12H6M11 7l-5 5 5 5',
  note: 'M5 4h14v16H5zM8 9h8M8 13h8M8 17h4',
  save: 'M5 5h11l3 3v11H5zM8 5v5h7V5M8 19v-5h8v5',
  hint: 'M9 18h6M10 21h4M8.5 15C6 13 6 10.5 6.5 9a5.6 5.6 0 0 1 11 0c.5 1.5.5 4-2 6z',
  machine: 'M4 6h16v10H4zM7 16v3M17 16v3M8 11m-2 0a2 2 0 1 0 4 0 2 2 0 1 0-4 0M13 9h4M13 12h4',
  pump: 'M4 17h16M6 17V9h8v8M14 11h4v6M10 9V5M8 5h4',
  dial: 'M5 5h14v10H5zM12 15v5M8 12v-2M11 12V8M14 12V9',
  tank: 'M8 9a4 4 0 0 1 8 0v11H8zM12 5V3M10 3h4M8 13h8',
  cylinder: 'M9 21V9a3 3 0 0 1 6 0v12zM12 6V3M12 4h4',
  syringe: 'M4 20l4-4M8 12l4 4 6-6-4-4zM16 4l4 4M12 8l1.5 1.5',
  sample: 'M7 4h10v16H7zM9.5 8h5M9.5 12h2M9.5 15h4',
  probe: 'M4 20l9-9M13 11l3-6 3 3zM18 13a4 4 0 0 1-3 3M20 15a7 7 0 0 1-4 4',
  bubbles:
    'M9 14m-4 0a4 4 0 1 0 8 0 4 4 0 1 0-8 0M16 9m-3 0a3 3 0 1 0 6 0 3 3 0 1 0-6 0M17 17m-2 0a2 2 0 1 0 4 0 2 2 0 1 0-4 0',
  lamp: 'M4 9h8v6H4zM12 9l5-3v12l-5-3M20 9v6',
  drop: 'M12 4c3 4 5 7 5 10a5 5 0 0 1-10 0c0-3 2-6 5-10z',
  lock: 'M7 11V8a5 5 0 0 1 10 0v3M5 11h14v9H5z',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon(props: { readonly name: IconName; readonly size?: number }): JSX.Element {
  return (
    <svg class="ic" style={{ '--ic': props.size ?? 20 }} viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[props.name]} />
    </svg>
  );
}

/** The mark of the program: a ring and a rounded square, the two ports. */
export function PortsMark(): JSX.Element {
  return (
    <svg width="40" height="22" viewBox="0 0 40 22" aria-hidden="true">
      <circle cx="11" cy="11" r="8.5" />
      <circle cx="11" cy="11" r="2.4" class="f" />
      <rect x="21.5" y="2.5" width="17" height="17" rx="3.5" />
      <rect x="27.6" y="8.6" width="4.8" height="4.8" class="f" />
    </svg>
  );
}
