import { EmptyScreen } from '../parts/empty-screen.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { StageOfAct } from './stage-of-act.tsx';
import './stage-screen.css';

/** The stage to scale, where everything can be moved, turned and typed. */
export function StageScreen() {
  const { open, look } = useHere();
  const text = words.stage;
  if (!open)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  // Another act begins with nothing chosen, and with all of it in sight.
  return <StageOfAct key={open.sheet.act.id} open={open} />;
}
