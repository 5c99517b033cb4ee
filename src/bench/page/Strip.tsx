const patches = 20;

/** Progress as a printer's control strip: patches that fill. */
export function Strip({ share, label }: { share: number; label: string }) {
  const percent = Math.round(share * 100);
  return (
    <span className="strip">
      <span
        className="patches"
        role="progressbar"
        aria-label={label}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={percent}
      >
        {Array.from({ length: patches }, (_, i) => (
          <i key={i} className={i < share * patches ? 'inked' : undefined} />
        ))}
      </span>
      <span>{label}</span>
    </span>
  );
}
