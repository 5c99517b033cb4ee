import type { Finding } from '../net/index.ts';
import { findingWords as words } from '../words/findings.ts';
import { foldWords } from '../words/fold.ts';
import { length as inUnit } from '../words/lengths.ts';
import { sayState } from '../words/states.ts';

/** A finding in words: what is wrong, what to do, and what would settle it. */
export interface FindingWords {
  say: string;
  do: string;
  settle: string;
}

/** What two sheets show of one thing lies so near, where they are laid right, mm. */
const togetherMm = 1;

/** What a finding has to say, from its kind, size and facts; under 0.5 it says that it is not sure. */
export function sayFinding(finding: Finding): FindingWords {
  const said = sentences(finding);
  const unsure = finding.certainty < 0.5 && finding.kind !== 'gap' ? `${words.lookHere} ` : '';
  return { say: unsure + said.say, do: said.do, settle: said.settle ?? words.settleByEye };
}

interface Said {
  say: string;
  do: string;
  settle?: string;
}

function sentences(finding: Finding): Said {
  const { kind, sizeMm = 0, lamps, facts, certainty } = finding;
  const size = inUnit(sizeMm);
  const lamp = lamps.join(', ');
  const fact = (key: string) => String(facts[key] ?? '');
  const length = (key: string) => inUnit(Number(facts[key] ?? 0));
  switch (kind) {
    case 'shorted-cell': {
      const { rim, copper, do: act, settle } = words.shortedCell;
      return { say: facts.rim ? rim : copper, do: act, settle };
    }
    case 'bridge':
      return sayBridge(finding, size);
    case 'gap':
      return certainty < 0.5
        ? { say: words.gap.unsure(size), do: words.gap.look, settle: words.gap.settle(lamp) }
        : {
            say: words.gap.say(size) + (lamp ? words.gap.starves(lamp) : ''),
            do: words.gap.do,
            settle: words.gap.settle(lamp),
          };
    case 'reversed-lamp':
      return facts.cell ? cellReversed(lamp) : allOf(words.reversedLamp, lamp);
    case 'lamp-off-strip': {
      const { say, both, by, do: act, settle } = words.lampOffStrip;
      const off = sizeMm > 0 ? by(size) : '';
      return {
        say: facts.pad === 'both' ? both(lamp) : say(lamp, fact('pad'), off),
        do: act(lamp),
        settle: settle(lamp),
      };
    }
    case 'lamp-on-one-strip': {
      const { say, do: act, settle } = words.lampOnOneStrip;
      return { say: say(lamp), do: act(lamp), settle };
    }
    case 'unfed-lamp': {
      const { say, do: act, settle } = words.unfedLamp;
      return { say: say(lamp, fact('side')), do: act(fact('side')), settle: settle(lamp) };
    }
    case 'lit-at-rest':
      return litTooSoon(finding, length);
    case 'missed-contact':
      return missedContact(finding, size, length);
    case 'missing-strip':
      return { ...words.missingStrip, say: words.missingStrip.say(fact('strip')) };
    case 'extra-strip':
      return words.extraStrip;
    case 'shifted-strip':
      return { ...words.shiftedStrip, say: words.shiftedStrip.say(fact('strip'), size) };
    case 'shifted-lamp':
      return { ...words.shiftedLamp, say: words.shiftedLamp.say(lamp, size) };
    case 'tight':
      return facts.patch
        ? { ...words.patch, say: words.patch.say(fact('patch'), size, length('limit')) }
        : { ...words.tight, say: words.tight.say(size, length('limit')) };
    case 'narrow-neck':
      return { ...words.narrowNeck, say: words.narrowNeck.say(size, length('usual')) };
    case 'seam':
      return { ...words.seam, say: facts.glare ? words.seam.glare : words.seam.say };
    case 'loose-end':
      return words.looseEnd;
    case 'near-edge':
      return { ...words.nearEdge, say: words.nearEdge.say(size, length('limit')) };
    case 'off-register': {
      const { say, by, do: act, settle } = foldWords.offRegister;
      return {
        say: say(fact('photo'), size, by[fact('by') as keyof typeof by]),
        do: act,
        settle: settle(inUnit(togetherMm)),
      };
    }
  }
}

function sayBridge({ facts, sizeMm }: Finding, size: string): Said {
  const { say, faint, join, heat, closed, do: act, look, settle } = words.bridge;
  const [between, and] = [String(facts.between), String(facts.and)];
  if (facts.faint) return { say: faint(size, between, and), do: look, settle };
  const what = facts.join || sizeMm === undefined ? join(between, and) : say(size, between, and);
  const when = facts.closed ? closed(String(facts.closed)) : '';
  return { say: what + when + (facts.shorts ? heat : ''), do: act, settle };
}

function cellReversed(lamps: string): Said {
  const { say, do: act, settle } = words.cellReversed;
  return { say: say(lamps), do: act, settle };
}

function allOf(
  { say, do: act, settle }: Record<'say' | 'do' | 'settle', (lamp: string) => string>,
  lamp: string,
): Said {
  return { say: say(lamp), do: act(lamp), settle: settle(lamp) };
}

function litTooSoon({ lamps, facts }: Finding, length: (key: string) => string): Said {
  const lamp = lamps.join(', ');
  if (facts.of === 'nest') return nest(words.nest.low, words.nest.raise, length);
  if (!facts.another)
    return { ...words.litAtRest, say: words.litAtRest.say(lamp, sayState(String(facts.state))) };
  return {
    ...words.wrongStep,
    say: words.wrongStep.say(lamp, sayState(String(facts.state)), String(facts.contact)),
  };
}

function nest(
  say: (foam: string, cell: string) => string,
  act: string,
  length: (key: string) => string,
): Said {
  return { say: say(length('foam'), length('cell')), do: act, settle: words.nest.settle };
}

const opposite: Record<string, string> = { left: 'right', right: 'left', above: 'down', below: 'up' };

function missedContact({ facts, sizeMm }: Finding, size: string, length: (key: string) => string): Said {
  const { cell, none, one, flap, shift, do: act, settle } = words.missedContact;
  const of = String(facts.of);
  if (facts.foldSide) return { ...foldWords.foldSide, say: foldWords.foldSide.say(of) };
  if (of === 'nest') return nest(words.nest.high, words.nest.lower, length);
  if (facts.order) {
    const { say, ...rest } = words.outOfOrder;
    return { ...rest, say: say(of, String(facts.order), String(facts.among)) };
  }
  if (facts.flap && sizeMm !== undefined) {
    const direction = String(facts.direction);
    return { say: flap(of, size, direction), do: shift(opposite[direction]), settle };
  }
  return { say: of.startsWith('cell') ? cell : facts.sides ? one(of) : none(of), do: act, settle };
}
