/** Metering device and compressor as they are drawn in the cutaway. */
import { type JSX, Show } from 'solid-js';
import { word } from '../../words/words';
import { Label } from './Label';
import { Spot, type SpotChoice } from './Spot';

/** A valve with its diaphragm, or a tube with its bore. */
export function Metering(props: { readonly kind: 'orifice' | 'valve'; readonly y: number }): JSX.Element {
  return (
    <g transform={`translate(340 ${props.y})`}>
      <Show
        when={props.kind === 'orifice'}
        fallback={
          <>
            <path d="M0 0V-18" class="wall" stroke-width="2.600" />
            <path d="M-14 -18a14 9 0 0 1 28 0z" class="device" />
            <path d="M-26-13L0 0L-26 13zM26-13L0 0L26 13z" class="device" />
          </>
        }
      >
        <path d="M28 -12h-14l-8 9h-12l-8-9h-14v24h14l8-9h12l8 9h14z" class="device" />
        <path d="M-26 0H26" class="bore" />
      </Show>
    </g>
  );
}

export function Compressor(props: { readonly choice: SpotChoice }): JSX.Element {
  return (
    <Spot id="compressor" choice={props.choice}>
      <circle cx="340" cy="74" r="44" class="spot-ring" />
      <circle cx="340" cy="74" r="38" class="device" />
      <path d="M316 60h48M316 88h48M346 74h18" class="wall" stroke-width="2.400" />
      <rect x="322" y="66" width="24" height="16" rx="2" class="piston" />
      <Label x={384} y={112} text={word('instrument.loop.compressor')} />
    </Spot>
  );
}
