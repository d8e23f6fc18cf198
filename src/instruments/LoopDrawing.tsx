/**
 * The loop cut open: low side in a solid frame, high side in a dashed one, phases as textures, points 1 to 4 where the
 * diagram and the table have them. View box 680 x 430.
 */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { coilPasses, type Pass, type Phase, phaseAt } from './loopPhases';
import { isKnown, type StatePoint } from './phGeometry';
import type { SaturationLine } from './saturation';

export interface LoopDrawingProps {
  readonly saturation: SaturationLine;
  readonly points: readonly StatePoint[];
  readonly metering: 'orifice' | 'valve';
  /** Pressures of the two sides, written. */
  readonly low: string;
  readonly high: string;
}

const PASSES = 5;
const PASS_STEP = 27;
const PASS_HEIGHT = 19;
const TEXTURE: Readonly<Record<Phase, string>> = { liquid: 't-liq', mixture: 't-two', vapour: 't-vap' };

function Pipe(props: { readonly d: string; readonly width: number; readonly phase: Phase }): JSX.Element {
  return (
    <>
      <path d={props.d} class="pipe wall" stroke-width={props.width + 5} />
      <path d={props.d} class="pipe" stroke={`url(#${TEXTURE[props.phase]})`} stroke-width={props.width} />
    </>
  );
}

/** One pass: vapour as ground, liquid from below up to its level. */
function PassBar(props: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly pass: Pass;
  readonly reversed: boolean;
}): JSX.Element {
  const left = (): number => (props.reversed ? props.pass.liquidTo : props.pass.liquidFrom);
  const right = (): number => (props.reversed ? props.pass.liquidFrom : props.pass.liquidTo);
  const y = (level: number): number => props.y + PASS_HEIGHT * (1 - level);
  const level = (): string =>
    `M${props.x + 4} ${props.y + PASS_HEIGHT - 1}V${y(left())}L${props.x + props.width - 4} ${y(right())}V${props.y + PASS_HEIGHT - 1}Z`;
  return (
    <g>
      <rect x={props.x} y={props.y} width={props.width} height={PASS_HEIGHT} rx="9.5" fill="url(#t-vap)" />
      <Show
        when={props.pass.phase === 'liquid'}
        fallback={<path d={level()} fill="url(#t-liq)" class="level" />}
      >
        <rect x={props.x} y={props.y} width={props.width} height={PASS_HEIGHT} rx="9.5" fill="url(#t-liq)" />
      </Show>
      <rect
        x={props.x}
        y={props.y}
        width={props.width}
        height={PASS_HEIGHT}
        rx="9.5"
        class="wall"
        stroke-width="2.2"
      />
    </g>
  );
}

interface CoilProps {
  readonly x: number;
  /** y of the first pass in flow order and the step to the next. */
  readonly y: number;
  readonly step: number;
  readonly firstTurn: 'left' | 'right';
  readonly passes: readonly Pass[];
}

function Coil(props: CoilProps): JSX.Element {
  const width = 170;
  const turn = (i: number): string => {
    const atRight = (i % 2 === 0) === (props.firstTurn === 'right');
    const x = atRight ? props.x + width - 4 : props.x + 4;
    const out = atRight ? 22 : -22;
    const half = props.step / 2;
    return `M${x} ${props.y + i * props.step + PASS_HEIGHT / 2}q${out} 0 ${out} ${half}t${-out} ${half}`;
  };
  return (
    <g>
      <For each={props.passes}>
        {(pass, i) => (
          <>
            <PassBar
              x={props.x}
              y={props.y + i() * props.step}
              width={width}
              pass={pass}
              reversed={(i() % 2 === 1) === (props.firstTurn === 'right')}
            />
            <Show when={i() < props.passes.length - 1}>
              <path d={turn(i())} class="wall" stroke-width="2.4" />
            </Show>
          </>
        )}
      </For>
    </g>
  );
}

function Label(props: {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}): JSX.Element {
  return (
    <text x={props.x} y={props.y} class="l-t" text-anchor={props.anchor ?? 'start'}>
      {props.text}
    </text>
  );
}

function NumberedPoint(props: {
  readonly x: number;
  readonly y: number;
  readonly number: number;
}): JSX.Element {
  const low = (): boolean => props.number === 1 || props.number === 4;
  return (
    <g transform={`translate(${props.x} ${props.y})`}>
      <Show
        when={low()}
        fallback={<rect x="-12.5" y="-12.5" width="25" height="25" rx="3" class="pt-high" />}
      >
        <circle r="13" class="pt-low" />
      </Show>
      <text y="5" class="c-pt">
        {props.number}
      </text>
    </g>
  );
}

function Arrow(props: { readonly x: number; readonly y: number; readonly turn: number }): JSX.Element {
  return (
    <path
      d="M-8-7L6 0L-8 7z"
      transform={`translate(${props.x} ${props.y}) rotate(${props.turn})`}
      class="flow-arrow"
    />
  );
}

function Frames(props: { readonly low: string; readonly high: string }): JSX.Element {
  return (
    <>
      <rect x="4" y="4" width="330" height="422" rx="14" class="zone low" />
      <rect x="346" y="4" width="330" height="422" rx="14" class="zone high" />
      <circle cx="30" cy="30" r="13" class="pt-low" />
      <text x="30" y="35" class="c-pt">
        L
      </text>
      <text x="50" y="36" class="l-z low">
        {word('instrument.loop.sidePressure', { side: word('instrument.side.low'), reading: props.low })}
      </text>
      <text x="630" y="36" class="l-z high" text-anchor="end">
        {word('instrument.loop.sidePressure', { side: word('instrument.side.high'), reading: props.high })}
      </text>
      <rect x="637" y="17" width="26" height="26" rx="3" class="pt-high" />
      <text x="650" y="35" class="c-pt">
        H
      </text>
    </>
  );
}

function Vessels(props: {
  readonly metering: 'orifice' | 'valve';
  readonly suction: Phase;
  readonly liquid: Phase;
}): JSX.Element {
  return (
    <Show
      when={props.metering === 'orifice'}
      fallback={
        <>
          <rect
            x="432"
            y="352"
            width="54"
            height="50"
            rx="14"
            fill={`url(#${TEXTURE[props.liquid]})`}
            class="vessel"
          />
          <Label x={459} y={344} anchor="middle" text={word('instrument.loop.receiver')} />
        </>
      }
    >
      <rect
        x="168"
        y="92"
        width="76"
        height="84"
        rx="26"
        fill={`url(#${TEXTURE[props.suction]})`}
        class="vessel"
      />
      <Label x={22} y={120} text={word('instrument.loop.accumulator')} />
    </Show>
  );
}

function Metering(props: { readonly metering: 'orifice' | 'valve' }): JSX.Element {
  return (
    <Show
      when={props.metering === 'orifice'}
      fallback={
        <>
          <path d="M318 362l22 14-22 14zM362 362l-22 14 22 14z" class="device" />
          <path d="M340 376V356" class="wall" stroke-width="2.4" />
          <circle cx="340" cy="350" r="9" class="device" />
          <Label x={340} y={408} anchor="middle" text={word('instrument.loop.expansionValve')} />
        </>
      }
    >
      <path d="M368 364h-14l-8 9h-12l-8-9h-14v24h14l8-9h12l8 9h14z" class="device" />
      <Label x={340} y={408} anchor="middle" text={word('instrument.loop.orificeTube')} />
    </Show>
  );
}

export function LoopDrawing(props: LoopDrawingProps): JSX.Element {
  const known = (): boolean => props.points.length === 4 && props.points.every(isKnown);
  const passes = (inlet: number, outlet: number): Pass[] =>
    known() ? coilPasses(props.saturation, props.points[inlet], props.points[outlet], PASSES) : [];
  const phase = (i: number): Phase => (known() ? phaseAt(props.saturation, props.points[i]) : 'vapour');
  return (
    <svg viewBox="0 0 680 430" class="loopd" role="img" aria-label={word('instrument.loop.label')}>
      <g color="var(--ink)">
        <Frames low={props.low} high={props.high} />
        <Show
          when={props.metering === 'orifice'}
          fallback={<Pipe d="M155 202V74H302" width={15} phase={phase(0)} />}
        >
          <Pipe d="M155 202V120H168" width={15} phase={phase(0)} />
          <Pipe d="M206 92V74H302" width={15} phase={phase(0)} />
        </Show>
        <Pipe d="M378 74H525V196" width={9} phase={phase(1)} />
        <Pipe d="M525 318V376H368" width={7} phase={phase(2)} />
        <Pipe d="M312 376H155V318" width={9} phase={phase(3)} />
        <Coil x={46} y={300} step={-PASS_STEP} firstTurn="right" passes={passes(3, 0)} />
        <Coil x={440} y={192} step={PASS_STEP} firstTurn="left" passes={passes(1, 2)} />
        <Vessels metering={props.metering} suction={phase(0)} liquid={phase(2)} />
        <circle cx="340" cy="74" r="38" class="device" />
        <path d="M316 60h48M316 88h48M346 74h18" class="wall" stroke-width="2.4" />
        <rect x="322" y="66" width="24" height="16" rx="2" class="piston" />
        <Metering metering={props.metering} />
        <Arrow x={270} y={74} turn={0} />
        <Arrow x={440} y={74} turn={0} />
        <Arrow x={525} y={140} turn={90} />
        <Arrow x={400} y={376} turn={180} />
        <Arrow x={240} y={376} turn={180} />
        <Arrow x={155} y={168} turn={-90} />
        <NumberedPoint x={124} y={182} number={1} />
        <NumberedPoint x={490} y={74} number={2} />
        <NumberedPoint x={556} y={350} number={3} />
        <NumberedPoint x={124} y={350} number={4} />
        <Label x={386} y={114} text={word('instrument.loop.compressor')} />
        <Label x={178} y={350} text={word('instrument.loop.evaporator')} />
        <Label x={640} y={180} anchor="end" text={word('instrument.loop.condenser')} />
      </g>
    </svg>
  );
}
