import { useEffect, useMemo, useState } from 'react';
import { type Paper, papers } from '../../core/sheets/paper-request.ts';
import { type FileForm, SheetOptions } from '../../core/sheets/sheets.ts';
import { useMomentKeys } from '../keys/use-moment-keys.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { LabelFields } from './label-fields.tsx';
import { PaperSaid } from './paper-said.tsx';
import { PaperTools } from './paper-tools.tsx';
import { Preview, type PreviewSize } from './preview.tsx';
import { PrintPages } from './print-pages.tsx';
import { choicesAt, formsOfChoice, type Place } from './sheet-choice.ts';
import { choiceTitle, SheetList } from './sheet-list.tsx';
import { useSheets, type Wanted } from './use-sheets.ts';
import './paper-screen.css';

/** Every sheet of the open act and its day, as it comes out of the printer, and the ways to take it along. */
export function PaperScreen() {
  const { open, day, show, look } = useHere();
  const act = open?.sheet.act;
  const place = useMemo(() => (act && day ? { show, act, day } : null), [show, act, day]);
  if (!place)
    return (
      <EmptyScreen
        what={words.paper.empty}
        todo={words.paper.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  return <PaperParts place={place} />;
}

// Paper and measures belong to the printer and the tape beside this computer, not to the show.
const paperKey = 'foldbook.paper';
const optionsKey = 'foldbook.labels';
const keysOfForms: Record<string, FileForm> = { s: 'pdf', x: 'xlsx', c: 'csv' };

function PaperParts({ place }: { place: Place }) {
  const text = words.paper;
  const {
    view: { sheet: asked },
    look,
  } = useHere();
  const [paper, setPaper] = useState<Paper>(rememberedPaper);
  const [options, setOptions] = useState<SheetOptions>(rememberedOptions);
  const [size, setSize] = useState<PreviewSize>('width');
  const choices = useMemo(() => choicesAt(place), [place]);
  // The first act of a day has no changeover before it.
  const chosen = [...choices.act, ...choices.day].includes(asked) ? asked : 'input list stage';
  const wanted = useMemo(
    (): Wanted => ({ place, choice: chosen, paper, options }),
    [place, chosen, paper, options],
  );
  const sheets = useSheets(wanted);
  useEffect(() => localStorage.setItem(paperKey, paper), [paper]);
  useEffect(() => localStorage.setItem(optionsKey, JSON.stringify(options)), [options]);
  useMomentKeys((key) => {
    const form = keysOfForms[key];
    if (key === 'Escape') sheets.stop();
    else if (key === 'p') void sheets.print();
    else if (form && formsOfChoice(chosen).includes(form)) void sheets.save(form);
    else return false;
    return true;
  });
  return (
    <section className="paper" aria-label={words.moments.paper}>
      <SheetList
        groups={[
          { name: text.ofAct(place.act.name), choices: choices.act },
          { name: text.ofDay(place.day.name), choices: choices.day },
        ]}
        chosen={chosen}
        onChoose={(sheet) => look({ sheet })}
      />
      <div className="paper-tools">
        <PaperTools
          forms={formsOfChoice(chosen)}
          isBusy={sheets.isBusy}
          paper={paper}
          size={size}
          onPaper={setPaper}
          onSize={setSize}
          onPrint={sheets.print}
          onSave={sheets.save}
        />
        <LabelFields choice={chosen} options={options} isBusy={sheets.isBusy} onOptions={setOptions} />
        <PaperSaid sheets={sheets} />
      </div>
      {sheets.shown && !sheets.problem ? (
        <Preview bytes={sheets.shown.bytes} size={size} name={choiceTitle(sheets.shown.wanted.choice)} />
      ) : (
        <div className="paper-preview" />
      )}
      <PrintPages pages={sheets.printPages} paper={paper} />
    </section>
  );
}

function rememberedPaper(): Paper {
  const kept = localStorage.getItem(paperKey);
  return papers.find((it) => it === kept) ?? 'A4';
}

/** What cannot be read any more, or was never written, is as the program would have it. */
function rememberedOptions(): SheetOptions {
  try {
    return SheetOptions.parse(JSON.parse(localStorage.getItem(optionsKey) ?? '{}'));
  } catch {
    return SheetOptions.parse({});
  }
}
