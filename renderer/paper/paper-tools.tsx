import { type Paper, papers } from '../../core/sheets/paper-request.ts';
import { type FileForm, fileForms } from '../../core/sheets/sheets.ts';
import { words } from '../wording/words.ts';
import { type PreviewSize, previewSizes } from './preview.tsx';

type Props = {
  forms: readonly FileForm[];
  /** A file is being made or drawn for the printer. */
  isBusy: boolean;
  paper: Paper;
  size: PreviewSize;
  onPaper: (paper: Paper) => void;
  onSize: (size: PreviewSize) => void;
  onPrint: () => void;
  onSave: (form: FileForm) => void;
};

const keyOf: Record<FileForm, string> = { pdf: 'S', xlsx: 'X', csv: 'C' };

export function PaperTools({ forms, isBusy, paper, size, onPaper, onSize, onPrint, onSave }: Props) {
  const text = words.paper;
  return (
    <div className="paper-tools-row">
      <button type="button" className="main" disabled={isBusy} onClick={onPrint}>
        {text.print} <kbd>P</kbd>
      </button>
      {fileForms.map((form) => (
        <button
          key={form}
          type="button"
          disabled={isBusy || !forms.includes(form)}
          onClick={() => onSave(form)}
        >
          {text.save[form]} <kbd>{keyOf[form]}</kbd>
        </button>
      ))}
      <label>
        {text.paper}{' '}
        <select
          value={paper}
          disabled={isBusy}
          onChange={({ target }) => onPaper(papers.find((it) => it === target.value) ?? paper)}
        >
          {papers.map((it) => (
            <option key={it}>{it}</option>
          ))}
        </select>
      </label>
      <label>
        {text.size}{' '}
        <select
          value={size}
          onChange={({ target }) => onSize(previewSizes.find((it) => it === target.value) ?? size)}
        >
          {previewSizes.map((it) => (
            <option key={it} value={it}>
              {text.sizes[it]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
