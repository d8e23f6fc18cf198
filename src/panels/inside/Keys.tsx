/** What the textures, tints and outlines of see-inside mean. */
import { For, type JSX } from 'solid-js';
import { word } from '../../words/words';

/** Which outline is which car. */
export function CycleKey(): JSX.Element {
  return (
    <ul class="key">
      <li>
        <svg width="34" height="14" aria-hidden="true">
          <path d="M2 7H32" class="cycle" />
        </svg>
        {word('inside.thisCar')}
      </li>
      <li>
        <svg width="34" height="14" aria-hidden="true">
          <path d="M2 7H32" class="cycle-healthy" />
          <circle cx="17" cy="7" r="4.500" class="pt-healthy" />
        </svg>
        {word('inside.healthyCar')}
      </li>
    </ul>
  );
}

export function PhaseKey(): JSX.Element {
  const rows: readonly (readonly [string, string])[] = [
    ['t-liq', word('inside.liquid')],
    ['t-two', word('inside.mixture')],
    ['t-vap', word('inside.vapour')],
  ];
  return (
    <ul class="key">
      <For each={rows}>
        {([texture, name]) => (
          <li>
            <svg width="40" height="20" aria-hidden="true">
              <rect width="38" height="18" x="1" y="1" rx="9" fill={`url(#${texture})`} class="swatch" />
            </svg>
            {name}
          </li>
        )}
      </For>
      <li class="hide-m">
        <svg width="26" height="14" aria-hidden="true">
          <path d="M2 7H24" class="healthy-mark" />
        </svg>
        {word('inside.healthyMark')}
      </li>
    </ul>
  );
}
