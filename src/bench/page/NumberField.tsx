import { useState } from 'react';

interface Props {
  label: string;
  value: number;
  digits: number;
  least: number;
  most: number;
  take(value: number): void;
}

/** A number to type; it counts when the field is left or Enter is pressed, and only within its bounds. */
export function NumberField({ label, value, digits, least, most, take }: Props) {
  const [typed, setTyped] = useState<string>();
  const commit = () => {
    if (typed === undefined) return;
    const number = Number(typed.replace(',', '.'));
    setTyped(undefined);
    if (typed.trim() === '' || !Number.isFinite(number)) return;
    const held = Math.min(most, Math.max(least, number));
    if (held !== value) take(held);
  };
  return (
    <label className="field">
      <span>{label}</span>
      <input
        type="text"
        inputMode="decimal"
        value={typed ?? String(Number(value.toFixed(digits)))}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={commit}
        onKeyDown={({ key }) => key === 'Enter' && commit()}
      />
    </label>
  );
}
