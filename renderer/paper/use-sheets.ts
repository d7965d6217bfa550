import { useEffect, useRef, useState } from 'react';
import type { Problem } from '../../core/contract/problem.ts';
import type { Paper } from '../../core/sheets/paper-request.ts';
import { type FileForm, makerOf, type SheetOptions } from '../../core/sheets/sheets.ts';
import { bytesOf } from '../parts/save-file.ts';
import { useHere, useSaved } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { saveFiles } from './save-files.ts';
import { formsOfChoice, jobsOfChoice, type Place, type SheetChoice } from './sheet-choice.ts';
import { type MadePaper, type MakeCall, type Making, usePaperCalls } from './use-paper-calls.ts';
import { type Drawing, type PrintPage, usePrinting } from './use-printing.ts';

export type Wanted = { place: Place; choice: SheetChoice; paper: Paper; options: SheetOptions };
/** The PDF on screen, and what it was made for. */
export type Shown = Pick<MadePaper, 'pageCount' | 'versions' | 'missing'> & {
  wanted: Wanted;
  bytes: Uint8Array;
};

export type Sheets = {
  shown: Shown | null;
  making: Making | null;
  drawing: Drawing | null;
  isBusy: boolean;
  problem: Problem | null;
  /** What was saved last, or what cannot be. */
  note: string;
  printPages: readonly PrintPage[];
  save(form: FileForm): Promise<void>;
  print(): Promise<void>;
  stop(): void;
  again(): void;
};

/** The arrow keys run down the list faster than sheets are made. */
const settledMs = 120;

/** Makes what is wanted whenever it changes, and the files that are asked for. */
export function useSheets(wanted: Wanted): Sheets {
  const { connection } = useHere();
  const { saving } = useSaved();
  const { making, make, stop: stopMaking } = usePaperCalls(connection);
  const printing = usePrinting();
  const [shown, setShown] = useState<Shown | null>(null);
  const [trouble, setTrouble] = useState<{ wanted: Wanted; problem: Problem } | null>(null);
  const [saved, setSaved] = useState<{ wanted: Wanted; name: string } | null>(null);
  const problem = trouble?.wanted === wanted ? trouble.problem : null;
  const isBusy = making?.why === 'file' || printing.drawing !== null;
  const busy = useRef(isBusy);
  busy.current = isBusy;

  // The saved show is what is printed, so what is typed waits until it is on the disk.
  const isDue = saving === 'saved' && !isBusy && problem === null && shown?.wanted !== wanted;
  useEffect(() => {
    if (!isDue) return;
    const timer = setTimeout(async () => {
      const answer = await make('preview', callFor(wanted, 'pdf', false));
      if (answer?.ok) setShown(shownOf(wanted, answer.value));
      else if (answer) setTrouble({ wanted, problem: answer.problem });
    }, settledMs);
    return () => clearTimeout(timer);
  }, [isDue, wanted, make]);

  const out = async (form: FileForm): Promise<MadePaper | null> => {
    if (busy.current) return null;
    setTrouble(null);
    setSaved(null);
    const answer = await make('file', callFor(wanted, form, true));
    if (!answer) return null;
    if (!answer.ok) {
      setTrouble({ wanted, problem: answer.problem });
      return null;
    }
    const made = answer.value;
    // What went out is kept as a version: it is no new one any more.
    const versions = made.versions.map((it) => ({ ...it, isNew: false }));
    if (form === 'pdf') setShown({ ...shownOf(wanted, made), versions });
    else setShown((now) => now && { ...now, versions: withKept(now.versions, versions) });
    return made;
  };
  const save = async (form: FileForm) => {
    const made = await out(form);
    if (!made) return;
    const files = made.files.map(({ name, base64 }) => ({ name, bytes: bytesOf(base64) }));
    setSaved({ wanted, name: saveFiles(files, archiveName(wanted)) });
  };
  const print = async () => {
    const made = await out('pdf');
    const [file] = made?.files ?? [];
    if (!made || !file) return;
    try {
      await printing.print(bytesOf(file.base64), made.pageCount);
    } catch {
      const { noPrint: what, noPrintTodo: todo } = words.paper;
      setTrouble({ wanted, problem: { code: 'internal error', what, todo } });
    }
  };
  const stop = () => {
    stopMaking();
    printing.stop();
  };
  return {
    shown,
    making,
    drawing: printing.drawing,
    isBusy,
    problem,
    note: saved?.wanted === wanted ? words.paper.saved(saved.name) : noteOf(wanted),
    printPages: printing.pages,
    save,
    print,
    stop,
    again: () => setTrouble(null),
  };
}

function callFor({ place, choice, paper, options }: Wanted, file: FileForm, keep: boolean): MakeCall {
  const jobs = jobsOfChoice(choice, place, file);
  const coverOfDayId = choice === 'whole day' && file === 'pdf' ? place.day.id : null;
  return { request: { jobs, file, paper, options, coverOfDayId }, keep };
}

function shownOf(wanted: Wanted, { files, pageCount, versions, missing }: MadePaper): Shown {
  return { wanted, bytes: bytesOf(files[0]?.base64 ?? ''), pageCount, versions, missing };
}

/** A set of tables has fewer sheets than the same set on paper. */
function withKept(versions: MadePaper['versions'], kept: MadePaper['versions']): MadePaper['versions'] {
  const byKey = new Map(kept.map((it) => [it.key, it]));
  return versions.map((it) => byKey.get(it.key) ?? it);
}

/** One sheet may be several tables, and so several files. */
function archiveName({ place, choice }: Wanted): string {
  if (choice === 'whole day') return `${place.day.name} - sheets`;
  if (choice === 'whole act') return `${place.act.name} - sheets`;
  const { title, of } = makerOf(choice);
  return `${of === 'day' ? place.day.name : place.act.name} - ${title}`;
}

const noteOf = ({ choice }: Wanted) => (formsOfChoice(choice).includes('csv') ? '' : words.paper.noTable);
