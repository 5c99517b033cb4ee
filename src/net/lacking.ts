import type { Lamp } from '../card/index.ts';
import type { Case } from './case.ts';

/** The side of a lamp that no state brings to its face of the cell; 'both' where neither or each by itself comes. */
export function lackingSide({ states, wiring: { netOf } }: Case, { id }: Lamp): '+' | '-' | 'both' {
  const meets = (sign: string) =>
    states.some(({ nodes }) =>
      nodes.some((nets) => nets.includes(netOf[`${id}${sign}`]) && nets.includes(netOf[`cell${sign}`])),
    );
  const [plus, minus] = [meets('+'), meets('-')];
  return plus === minus ? 'both' : plus ? '-' : '+';
}
