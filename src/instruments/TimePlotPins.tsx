/** What stands over the plot's lanes: numbered pins of actions, and how much of a wait a fold holds. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { plainNumber } from './displayUnits';
import type { Fold, TimeAxis } from './foldedTime';
import { clusterPins, type PinCluster } from './pinPlaces';

export interface Pin {
  readonly number: number;
  readonly seconds: number;
  /** Left out, moved here, or where a moved one was. */
  readonly kind: 'plain' | 'left' | 'moved' | 'from';
}

export interface PlotFrame {
  readonly axis: TimeAxis;
  readonly x: (seconds: number) => number;
  readonly left: number;
  readonly right: number;
  /** No room beside it. */
  readonly isNarrow: boolean;
}

/** Height of the row of pins. */
export const TOP = 44;
const SPECIAL_WIDE = 22;

export function Pins(props: {
  readonly pins: readonly Pin[];
  readonly frame: PlotFrame;
  readonly bottom: number;
  readonly cursorS: number | null;
}): JSX.Element {
  const plain = (): readonly Pin[] => props.pins.filter(({ kind }) => kind === 'plain');
  const special = (): readonly Pin[] => props.pins.filter(({ kind }) => kind !== 'plain');
  const clusters = (): PinCluster[] =>
    clusterPins(
      plain().map((pin) => props.frame.x(pin.seconds)),
      props.frame.left - 10,
      props.frame.right + 10,
    ).map((cluster) => besides(cluster, special()[0]));
  /** A pin of its own kind stands at its moment; the run it would hide goes to the side with more room. */
  const besides = (cluster: PinCluster, one: Pin | undefined): PinCluster => {
    if (!one) return cluster;
    const at = props.frame.x(one.seconds);
    const apart = SPECIAL_WIDE / 2 + 2 + cluster.width / 2;
    if (Math.abs(cluster.x - at) >= apart) return cluster;
    const isLeft = at > (props.frame.left + props.frame.right) / 2;
    return { ...cluster, x: at + (isLeft ? -apart : apart) };
  };
  const chosen = (pin: Pin): boolean => props.cursorS !== null && Math.abs(pin.seconds - props.cursorS) < 0.5;
  const numbers = ({ from, to }: PinCluster): string =>
    from === to
      ? String(plain()[from].number)
      : word('instrument.plot.run', {
          from: String(plain()[from].number),
          to: String(plain()[to].number),
        });
  return (
    <>
      <For each={props.pins}>
        {(pin) => (
          <path
            class="pin-line"
            classList={{ on: chosen(pin), [pin.kind]: true }}
            d={`M${props.frame.x(pin.seconds)} ${TOP - 20}V${props.bottom}`}
          />
        )}
      </For>
      <For each={clusters()}>
        {(cluster) => (
          <g>
            <rect
              class="pin"
              classList={{
                on: plain()
                  .slice(cluster.from, cluster.to + 1)
                  .some(chosen),
              }}
              x={cluster.x - cluster.width / 2}
              y="2"
              width={cluster.width}
              height="19"
              rx="4"
            />
            <text class="c-pin" x={cluster.x} y="16">
              {numbers(cluster)}
            </text>
          </g>
        )}
      </For>
      <For each={special()}>
        {(pin) => (
          <g>
            <rect
              class={`pin ${pin.kind}`}
              x={props.frame.x(pin.seconds) - SPECIAL_WIDE / 2}
              y="1"
              width={SPECIAL_WIDE}
              height="21"
              rx="5"
            />
            <Show when={pin.kind === 'left'} fallback={<SpecialWords pin={pin} frame={props.frame} />}>
              <path
                class="pin-cross"
                d={`M${props.frame.x(pin.seconds) - 5} 6.5l10 10M${props.frame.x(pin.seconds) + 5} 6.5l-10 10`}
              />
            </Show>
          </g>
        )}
      </For>
    </>
  );
}

function SpecialWords(props: { readonly pin: Pin; readonly frame: PlotFrame }): JSX.Element {
  return (
    <Show when={props.pin.kind === 'moved'}>
      <text class="c-pin" x={props.frame.x(props.pin.seconds)} y="16">
        {String(props.pin.number)}
      </text>
    </Show>
  );
}

/** How much of a wait is squeezed into a fold, written up along it. */
export function FoldWords(props: {
  readonly fold: Fold;
  readonly frame: PlotFrame;
  readonly bottom: number;
}): JSX.Element {
  const minutes = (): string => plainNumber((props.fold.toS - props.fold.fromS) / 60);
  const x = (): number => (props.frame.x(props.fold.fromS) + props.frame.x(props.fold.toS)) / 2 + 4;
  return (
    <text
      class="c-ax"
      text-anchor="middle"
      transform={`translate(${x()} ${(TOP + props.bottom) / 2}) rotate(-90)`}
    >
      {word('instrument.plot.fold', { minutes: minutes() })}
    </text>
  );
}
