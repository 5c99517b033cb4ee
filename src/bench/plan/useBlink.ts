import { useEffect, useState } from 'react';

/** Held down, B hides the plan, so that a difference jumps. @returns whether it is hidden, and a switch for a button */
export function useBlink(): [hidden: boolean, hide: (hidden: boolean) => void] {
  const [hidden, setHidden] = useState(false);
  useEffect(() => {
    const set = (to: boolean) => (event: KeyboardEvent) => {
      if (event.key.toLowerCase() === 'b' && !isTyping(event.target)) setHidden(to);
    };
    const [down, up] = [set(true), set(false)];
    addEventListener('keydown', down);
    addEventListener('keyup', up);
    return () => {
      removeEventListener('keydown', down);
      removeEventListener('keyup', up);
    };
  }, []);
  return [hidden, setHidden];
}

/** Whether a key goes into a field. */
export function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement)
    return !['radio', 'checkbox', 'range', 'file'].includes(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
