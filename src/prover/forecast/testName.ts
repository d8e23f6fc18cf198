/** A test as a reader is told of it: what is read or looked at, and of a car in which state. The id where it has no words. */
import { nameOf } from '../../twin/nameOf';
import { isWordId, say, word } from '../../words/words';

export function testName(id: string): string {
  const cut = id.lastIndexOf('.');
  const state = `proveTests.state.${id.slice(cut + 1)}`;
  const what = channelName(id.slice(0, cut));
  return what === null || !isWordId(state)
    ? id
    : word('proveTests.test', { what, state: say({ id: state }) });
}

function channelName(channel: string): string | null {
  const [first, second] = channel.split(/[.@]/);
  switch (first) {
    case 'air':
      return word('proveTests.airAt', { place: nameOf(second) });
    case 'line':
      return word('proveTests.pipeAt', { place: nameOf(second) });
    case 'fan':
      return word('proveTests.fan', { part: nameOf(second) });
    case 'dirt':
      return word('proveTests.dirt', { part: nameOf(second) });
    default: {
      const id = `proveTests.channel.${channel.replace('.', '-')}`;
      return isWordId(id) ? say({ id } as { id: 'proveTests.channel.leak-search' }) : null;
    }
  }
}
