import { useId } from 'react';

interface Props {
  label: string;
  accept: string;
  /** Asks a phone for its camera, the one at the back. */
  capture?: boolean;
  /** Several may be chosen; each is taken. */
  several?: boolean;
  className?: string;
  take(file: File): void;
}

/** A file input that reads as a button in words. */
export function FileButton({ label, accept, capture, several, className = '', take }: Props) {
  const id = useId();
  return (
    <span className={`file-button ${capture ? 'by-camera' : ''}`}>
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={several}
        capture={capture ? 'environment' : undefined}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          target.value = '';
          files.forEach(take);
        }}
      />
      <label htmlFor={id} className={className}>
        {label}
      </label>
    </span>
  );
}
