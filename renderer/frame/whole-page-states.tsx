import { useSaved } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './whole-page-states.css';

function WholePage({ what, todo, again }: { what: string; todo?: string; again?: boolean }) {
  return (
    <main className="whole-page">
      <h1>{words.program}</h1>
      <p className="whole-page-what">{what}</p>
      {todo && <p>{todo}</p>}
      {again && (
        <button type="button" className="main" onClick={() => location.reload()}>
          {words.connection.tryAgain}
        </button>
      )}
    </main>
  );
}

export function NoToken() {
  return <WholePage what={words.connection.noToken} todo={words.connection.noTokenTodo} />;
}

export function Opening() {
  return <WholePage what={words.connection.opening} />;
}

export function OpenFailed() {
  const { problem } = useSaved();
  return (
    <WholePage
      what={problem ? problem.what : words.connection.failed}
      {...(problem ? { todo: problem.todo } : {})}
      again
    />
  );
}
