import { useState } from 'react';
import type { Question } from '../../core/rider/reading.ts';
import { words } from '../wording/words.ts';
import type { AnsweredQuestion } from './earlier-answers.ts';
import type { Linked, Pointed } from './links.ts';
import { type Remember, RememberWord } from './remember-word.tsx';
import './questions.css';

type Props = {
  /** The most urgent first. */
  open: readonly Question[];
  answered: readonly AnsweredQuestion[];
  linked: Linked;
  current: Question | null;
  onPoint: (pointed: Pointed) => void;
  onChoose: (pointed: Pointed) => void;
  onAnswer: (question: Question, value: string | null) => void;
  /** Whether the answer to a question about words is to hold from now on. */
  remember: Remember;
};

/** Open questions first, one large at a time; a digit answers it. Answered ones stay below and can be opened again. */
export function Questions({ open, answered, linked, current, remember, ...on }: Props) {
  const text = words.advance;
  const { onPoint, onChoose, onAnswer } = on;

  return (
    <section
      className="questions"
      aria-label={text.questions}
      data-region="questions"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys of the questions need a place to be pressed.
      tabIndex={0}
      data-first-focus
      onMouseLeave={() => onPoint(null)}
    >
      <h2>
        {text.questions} <span className="questions-count">{open.length}</span>
      </h2>
      {open.length === 0 && (
        <p className="questions-none">{answered.length === 0 ? text.noQuestions : text.allAnswered}</p>
      )}
      <ol>
        {open.map((question) => (
          <li
            key={question.key}
            className={linked.questions.has(question.key) ? 'question is-linked' : 'question'}
            onMouseEnter={() => onPoint({ of: 'question', key: question.key })}
          >
            {question === current ? (
              <OpenQuestion
                question={question}
                remember={remember}
                onAnswer={(value) => onAnswer(question, value)}
              />
            ) : (
              <button
                type="button"
                className="question-ask"
                onClick={() => onChoose({ of: 'question', key: question.key })}
              >
                {question.ask}
              </button>
            )}
          </li>
        ))}
      </ol>
      {answered.length > 0 && (
        <details className="questions-answered">
          <summary>{text.answered(answered.length, answered.filter((it) => it.asBefore).length)}</summary>
          <ul>
            {answered.map(({ question, value, asBefore }) => (
              <li key={question.key}>
                <span>{question.ask}</span>
                <strong>
                  {labelOf(question, value)}
                  {asBefore && <span className="quiet"> {text.asBefore}</span>}
                </strong>
                <button
                  type="button"
                  aria-label={`${text.askAgain}: ${question.ask}`}
                  onClick={() => onAnswer(question, null)}
                >
                  {text.askAgain}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

type OpenProps = { question: Question; remember: Remember; onAnswer: (value: string) => void };

function OpenQuestion({ question, remember, onAnswer }: OpenProps) {
  const [own, setOwn] = useState('');
  const text = words.advance;
  return (
    <div className="question-open">
      <p className="question-ask">{question.ask}</p>
      {question.words !== undefined && <RememberWord words={question.words} {...remember} />}
      {question.options.slice(0, 9).map((option, index) => (
        <button
          key={option.value}
          type="button"
          className="question-option"
          onClick={() => onAnswer(option.value)}
        >
          <kbd>{index + 1}</kbd> {option.label}
          {index === 0 && <span className="quiet"> {text.asRead(question.guessConfidence)}</span>}
        </button>
      ))}
      {question.freeText && (
        <form
          className="question-own"
          onSubmit={(event) => {
            event.preventDefault();
            if (own.trim() !== '') onAnswer(own.trim());
          }}
        >
          <input
            aria-label={text.ownAnswer}
            placeholder={text.ownAnswer}
            value={own}
            onChange={(event) => setOwn(event.target.value)}
          />
          <button type="submit">{text.answer}</button>
        </form>
      )}
    </div>
  );
}

const labelOf = (question: Question, value: string) =>
  question.options.find((option) => option.value === value)?.label ?? value;
