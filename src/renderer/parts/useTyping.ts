import { useEffect, useRef, useState } from 'react';

/** How long a hand rests before what it has typed so far goes into the pattern, milliseconds. */
const REST = 900;

let marks = 0;

export interface Typing {
  /** What stands in the field; null while that is what the pattern has. */
  readonly typed: string | null;
  readonly type: (text: string) => void;
  /** Puts what is typed into the pattern. */
  readonly finish: () => void;
  /** Forgets what is typed and not in the pattern yet. */
  readonly giveUp: () => void;
}

export interface TypingNeeds {
  readonly value: string;
  /** All that is told with one mark belongs to one act. */
  readonly onChange: (value: string, mark: string) => void;
  /** Whether a text may not stand. */
  readonly wrong: (text: string) => boolean;
  /** Long texts go into the pattern while they are typed, so that a crash loses none of them. */
  readonly whileTyping: boolean;
}

/** Holds what is typed until it goes into the pattern. */
export function useTyping({ value, onChange, wrong, whileTyping }: TypingNeeds): Typing {
  const [typed, setTyped] = useState<string | null>(null);
  const mark = useRef('');
  const give = (text: string) => {
    if (text.trim() !== value && !wrong(text)) onChange(text.trim(), mark.current);
  };
  const latest = useRef(give);
  latest.current = give;

  useEffect(() => {
    if (!whileTyping || typed === null) return;
    const rest = setTimeout(() => latest.current(typed), REST);
    return () => clearTimeout(rest);
  }, [typed, whileTyping]);

  return {
    typed,
    type: (text) => {
      if (typed === null) mark.current = `typing ${++marks}`;
      setTyped(text);
    },
    finish: () => {
      if (typed === null || wrong(typed)) return;
      setTyped(null);
      give(typed);
    },
    giveUp: () => setTyped(null),
  };
}
