import { useEffect, useRef } from 'react';
import { create } from 'zustand';
import './question.css';

interface Asked {
  readonly title: string;
  readonly text: string;
  readonly answers: readonly string[];
  readonly answer: (chosen: string | null) => void;
}

const useAsked = create<{ readonly asked: Asked | null }>()(() => ({ asked: null }));

/** Asks a question in front of everything; null when it is put away by Escape. */
export const ask = (title: string, text: string, answers: readonly string[]): Promise<string | null> =>
  new Promise((resolve) => {
    useAsked.setState({
      asked: {
        title,
        text,
        answers,
        answer(chosen) {
          useAsked.setState({ asked: null });
          resolve(chosen);
        },
      },
    });
  });

/** Where questions appear; mounted once. */
export function Question() {
  const { asked } = useAsked();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (asked !== null) dialog.current?.showModal();
  }, [asked]);
  if (asked === null) return null;
  return (
    <dialog
      ref={dialog}
      className="question"
      aria-labelledby="question-title"
      onCancel={(event) => {
        event.preventDefault();
        asked.answer(null);
      }}
    >
      <h2 id="question-title">{asked.title}</h2>
      <p>{asked.text}</p>
      <div className="question-answers">
        {asked.answers.map((answer) => (
          <button key={answer} type="button" onClick={() => asked.answer(answer)}>
            {answer}
          </button>
        ))}
      </div>
    </dialog>
  );
}
