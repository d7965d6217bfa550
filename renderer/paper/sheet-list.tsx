import { makerOf } from '../../core/sheets/sheets.ts';
import { words } from '../wording/words.ts';
import type { SheetChoice } from './sheet-choice.ts';

export function choiceTitle(choice: SheetChoice): string {
  return choice === 'whole act' || choice === 'whole day' ? words.paper.whole[choice] : makerOf(choice).title;
}

type Group = { name: string; choices: readonly SheetChoice[] };
type Props = { groups: readonly Group[]; chosen: SheetChoice; onChoose: (choice: SheetChoice) => void };

/** Every sheet that there is here; the arrow keys go from one to the next. */
export function SheetList({ groups, chosen, onChoose }: Props) {
  return (
    <nav className="paper-list" aria-label={words.paper.sheets}>
      {groups.map(({ name, choices }) => (
        <fieldset key={name}>
          <legend>{name}</legend>
          {choices.map((choice) => (
            <label key={choice}>
              <input
                type="radio"
                name="sheet"
                checked={choice === chosen}
                {...(choice === chosen ? { 'data-first-focus': true } : {})}
                onChange={() => onChoose(choice)}
              />
              {choiceTitle(choice)}
            </label>
          ))}
        </fieldset>
      ))}
    </nav>
  );
}
