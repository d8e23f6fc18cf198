/** The nose of a car by its body: each its own leading edge, lamps and bumper. */
import type { Layout } from '../../../layout/layout';
import type { Drawing } from '../record';
import { nose } from './nose';
import { noseClosed } from './noseClosed';
import { noseFlat } from './noseFlat';
import { noseUpright } from './noseUpright';

export function front({ body, shell }: Layout): Drawing {
  if (body === 'pickup') return noseUpright(shell);
  if (body === 'van') return noseFlat(shell);
  return body === 'electric' ? noseClosed(shell) : nose(shell);
}
