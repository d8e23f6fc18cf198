/** A digital read-out as a plate: name, number with its unit, a note under it. */
import type { JSX } from 'solid-js';
import type { Written } from '../instruments/displayUnits';
import { word } from '../words/words';
import { Icon, type IconName } from './Icon';

export function Meter(props: {
  readonly icon: IconName;
  readonly name: string;
  readonly reading: Written | null;
  readonly note: string;
}): JSX.Element {
  return (
    <div class="meter" classList={{ 'is-off': props.reading === null }}>
      <div class="l">
        <Icon name={props.icon} size={16} />
        <span>{props.name}</span>
      </div>
      <div class="v">
        {props.reading?.number ?? word('instrument.nothing')} <small>{props.reading?.unit}</small>
      </div>
      <div class="xs mut">{props.note}</div>
    </div>
  );
}
