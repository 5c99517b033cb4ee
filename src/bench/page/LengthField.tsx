import { inchMm, unit, unitSign } from '../../words/lengths.ts';
import { NumberField } from './NumberField.tsx';

interface Props {
  label: string;
  mm: number;
  leastMm: number;
  mostMm: number;
  /** Takes the length in mm, whatever unit it was typed in. */
  take(mm: number): void;
}

/** A length to type in the chosen unit. The card keeps mm, to a thousandth: an inch of four decimals comes back as typed. */
export function LengthField({ label, mm, leastMm, mostMm, take }: Props) {
  const per = unit() === 'mm' ? 1 : inchMm;
  return (
    <NumberField
      label={`${label}, ${unitSign()}`}
      value={mm / per}
      digits={unit() === 'mm' ? 2 : 4}
      least={leastMm / per}
      most={mostMm / per}
      take={(value) => take(Math.round(1000 * value * per) / 1000)}
    />
  );
}
