import type { ReactNode } from 'react';
import './slider.css';

interface Props {
  label: ReactNode;
  value: number;
  /** 0 unless said. */
  least?: number;
  /** 1 unless said. */
  most?: number;
  step: number;
  /** The value in words, where its figure alone says too little. */
  said?: string;
  /** On one line: label, slider and this. */
  beside?: string;
  /** What the two ends mean. */
  ends?: readonly [string, string];
  set(value: number): void;
}

/** A value to slide. */
export function Slider({ label, value, least = 0, most = 1, step, said, beside, ends, set }: Props) {
  return (
    <label className={beside === undefined ? 'field' : 'slide'}>
      <span>{label}</span>
      <input
        type="range"
        min={least}
        max={most}
        step={step}
        value={value}
        aria-valuetext={said}
        onChange={({ target }) => set(target.valueAsNumber)}
      />
      {beside !== undefined && <output>{beside}</output>}
      {ends && (
        <span className="ends pencil" aria-hidden="true">
          <span>{ends[0]}</span>
          <span>{ends[1]}</span>
        </span>
      )}
    </label>
  );
}
