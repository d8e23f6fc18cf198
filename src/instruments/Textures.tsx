/**
 * Textures that tell phases and parts apart without colour, defined once per document: liquid is a dense diagonal hatch,
 * liquid with vapour waves under rings, vapour sparse rings. They take the colour of the text around them.
 */
import type { JSX } from 'solid-js';

export function Textures(): JSX.Element {
  return (
    <svg width="0" height="0" aria-hidden="true" class="texture-defs">
      <defs>
        <pattern id="t-liq" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="7" height="7" class="tx-bg" />
          <rect width="4.4" height="7" class="tx-ink" />
        </pattern>
        <pattern id="t-vap" width="13" height="13" patternUnits="userSpaceOnUse">
          <rect width="13" height="13" class="tx-bg" />
          <circle cx="3.5" cy="3.5" r="1.7" class="tx-ring" />
          <circle cx="10" cy="10" r="1.7" class="tx-ring" />
        </pattern>
        <pattern id="t-two" width="16" height="12" patternUnits="userSpaceOnUse">
          <rect width="16" height="12" class="tx-bg" />
          <path d="M0 9q4-3 8 0t8 0V12H0z" class="tx-ink" />
          <circle cx="5" cy="3.5" r="2.1" class="tx-ring" />
          <circle cx="12.5" cy="4.5" r="1.5" class="tx-ring" />
        </pattern>
        <pattern id="t-vac" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(30)">
          <rect width="1.2" height="4" class="tx-ink" />
        </pattern>
      </defs>
    </svg>
  );
}
