import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { ownWordsOfAct } from '../../core/rider/own-words.ts';
import type { Question, Reading } from '../../core/rider/reading.ts';
import type { RiderRecord } from '../../core/show/rider-record.ts';
import { isTyping } from '../keys/use-keys.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { answersOfRider, readingOf } from '../state/reading-cache.ts';
import { words } from '../wording/words.ts';
import { ActTables } from './act-tables.tsx';
import { answeredQuestions } from './earlier-answers.ts';
import { linkedTo, openLineCount, type Pointed } from './links.ts';
import { Questions } from './questions.tsx';
import { nextScope, type Scope } from './remember-word.tsx';
import { ReplyToBand } from './reply-to-band.tsx';
import { answerChange } from './rider-changes.ts';
import { RiderPage } from './rider-page.tsx';
import { rowLinks } from './row-links.ts';
import { teachAnswerChange } from './teach-changes.ts';

/** Left the rider as it came, in the middle what it was taken to mean, right what it leaves open. */
export function RiderAndMeaning({ open, rider }: { open: ActOnScreen; rider: RiderRecord }) {
  const { show, change } = useHere();
  const answers = useMemo(() => answersOfRider(show, rider.id), [show, rider.id]);
  const taught = useMemo(() => ownWordsOfAct(show, rider.actId), [show, rider.actId]);
  const reading = readingOf(rider.grid, answers, taught);
  const [pointed, setPointed] = useState<Pointed>(null);
  const [chosen, setChosen] = useState<Pointed>(null);
  const [scope, setScope] = useState<Scope | null>(null);
  // A replaced rider asks nothing more.
  const questions = rider.replaced ? noQuestions : reading.questions;
  const answered = useMemo(() => answeredQuestions(show, rider), [show, rider]);
  const current = questionOf(questions, chosen) ?? questions[0] ?? null;
  const focus = pointed ?? chosen ?? (current && { of: 'question', key: current.key });
  const linked = useMemo(() => linkedTo(reading, focus), [reading, focus]);
  const links = useMemo(() => rowLinks(open.sheet, reading), [open.sheet, reading]);
  const openLines = openLineCount(reading);

  // Who has just brought a rider in answers its questions next.
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (document.activeElement === document.body)
      place.current?.querySelector<HTMLElement>('.questions')?.focus();
  }, []);

  const answer = (question: Question, value: string | null) => {
    // The next question is the one after this; without a choice the first open one is current.
    setChosen(null);
    setScope(null);
    const teaching =
      value !== null && scope !== null ? teachAnswerChange(show, rider, question, value, scope) : null;
    change(teaching ?? answerChange(show, rider, question, value));
  };
  // What is to be remembered was said of the question that was open.
  const choose = (next: Pointed) => {
    setChosen(next);
    setScope(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (!current || event.defaultPrevented || isTyping(event.target)) return;
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const option = /^[1-9]$/.test(event.key) ? current.options[Number(event.key) - 1] : undefined;
    const next = by === undefined ? undefined : questions[questions.indexOf(current) + by];
    if (option) answer(current, option.value);
    else if (next) choose({ of: 'question', key: next.key });
    else if (event.key.toLowerCase() === 'w' && current.words !== undefined) setScope(nextScope(scope));
    else return;
    event.preventDefault();
  };
  const pointOf = (row: { sourceId: string } | { mixId: string } | null): Pointed => {
    if (row === null) return null;
    if ('sourceId' in row) {
      const key = links.inputOfSource.get(row.sourceId);
      return key === undefined ? null : { of: 'input', key };
    }
    const key = links.mixOfMix.get(row.mixId);
    return key === undefined ? null : { of: 'mix', key };
  };

  return (
    <section
      className={questions.length > 0 ? 'advance-three' : 'advance-three is-settled'}
      aria-label={words.advance.riderAndMeaning}
      onKeyDown={onKeyDown}
    >
      <section
        className="advance-rider"
        aria-label={words.advance.asItCame(rider.fileName)}
        data-region="rider"
      >
        <h2 className="cut" title={rider.fileName}>
          {rider.fileName}
        </h2>
        <Counter reading={reading} openLines={openLines} />
        <RiderPage
          grid={rider.grid}
          reading={reading}
          linked={linked}
          current={chosen ?? (current && { of: 'question', key: current.key })}
          onPoint={setPointed}
          onChoose={choose}
        />
      </section>
      <ActTables
        open={open}
        markedSources={links.sourcesOf(linked.inputs)}
        markedMixes={links.mixesOf(linked.mixes)}
        guessed={links.guessedSources}
        notes={reading.notes}
        onNote={({ at }) => choose({ of: 'line', at })}
        onPoint={(row) => setPointed(pointOf(row))}
        onChoose={(row) => choose(pointOf(row))}
      />
      <div className="advance-questions" ref={place}>
        <Questions
          open={questions}
          answered={answered}
          linked={linked}
          current={current}
          onPoint={setPointed}
          onChoose={choose}
          onAnswer={answer}
          remember={{ scope, band: open.sheet.act.name, onScope: setScope }}
        />
        <ReplyToBand open={open} questions={questions} />
      </div>
    </section>
  );
}

const noQuestions: readonly Question[] = [];

const questionOf = (questions: readonly Question[], chosen: Pointed) =>
  chosen?.of === 'question' ? questions.find((question) => question.key === chosen.key) : undefined;

function Counter({ reading, openLines }: { reading: Reading; openLines: number }) {
  const outcomes = Object.entries(words.advance.outcome).map(([outcome, name]) => {
    const n = reading.lines.filter((line) => line.outcome === outcome).length;
    return { name, n };
  });
  return (
    <p className={openLines > 0 ? 'advance-counter is-open' : 'advance-counter'} aria-live="polite">
      <strong>{words.advance.counter(openLines)}</strong>
      <span className="quiet">
        {outcomes
          .filter(({ n }) => n > 0)
          .map(({ n, name }) => `${n} ${name}`)
          .join(', ')}
      </span>
    </p>
  );
}
