interface Props<Choice extends string> {
  legend: string;
  /** Parts the group from others on the page. */
  name: string;
  offered: readonly Choice[];
  labels: Record<Choice, string>;
  chosen: Choice;
  choose(choice: Choice): void;
}

/** One of several, in words. */
export function Radios<Choice extends string>({
  legend,
  name,
  offered,
  labels,
  chosen,
  choose,
}: Props<Choice>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="tools">
        {offered.map((each) => (
          <label key={each}>
            <input type="radio" name={name} checked={chosen === each} onChange={() => choose(each)} />
            {labels[each]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
