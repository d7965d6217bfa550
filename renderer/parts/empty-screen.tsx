import './empty-screen.css';

/** A screen that has nothing to show yet says so, and leads to what would fill it. */
export function EmptyScreen({
  what,
  todo,
  action,
}: {
  what: string;
  todo: string;
  action?: { label: string; run: () => void };
}) {
  return (
    <div className="empty-screen">
      <p className="empty-screen-what">{what}</p>
      <p>{todo}</p>
      {action && (
        <button type="button" className="main" onClick={action.run}>
          {action.label}
        </button>
      )}
    </div>
  );
}
