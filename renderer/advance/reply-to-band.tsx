import { useId, useState } from 'react';
import type { Question } from '../../core/rider/reading.ts';
import { viewAct } from '../../core/sheets/act-view.ts';
import { replyMail } from '../../core/sheets/reply-mail.ts';
import { Modal } from '../parts/modal.tsx';
import { bytesOf, saveFile } from '../parts/save-file.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './reply-to-band.css';

type Props = { open: ActOnScreen; questions: readonly Question[] };

/** What the house offers, what the band brings and what is open: a mail to copy or keep, and the same as a PDF. */
export function ReplyToBand({ open, questions }: Props) {
  const [isOpen, setOpen] = useState(false);
  const text = words.advance;
  return (
    <p className="advance-reply">
      <button type="button" onClick={() => setOpen(true)}>
        {text.reply}
      </button>
      {isOpen && (
        <Modal title={text.reply} onClose={() => setOpen(false)}>
          <Letter open={open} questions={questions} onClose={() => setOpen(false)} />
        </Modal>
      )}
    </p>
  );
}

function Letter({ open, questions, onClose }: Props & { onClose: () => void }) {
  const { connection, tell } = useHere();
  const [done, setDone] = useState('');
  const id = useId();
  const text = words.advance;
  const { act } = open.sheet;
  const { subject, body } = replyMail({ ...viewAct(open.sheet, open.derived), questions: [...questions] });
  const whole = `${subject}\n\n${body}\n`;
  const savePdf = async () => {
    setDone(text.replyMaking);
    const answer = await connection.call('paper.make', {
      request: {
        jobs: [{ sheet: 'advance reply', ofId: act.id }],
        file: 'pdf',
      },
      keep: true,
    });
    setDone('');
    if (!answer.ok) tell(answer.problem);
    else
      for (const { name, base64 } of answer.value.files) saveFile(name, bytesOf(base64), 'application/pdf');
  };
  return (
    <>
      <div className="modal-head">
        <h2>{text.reply}</h2>
        <button type="button" onClick={onClose}>
          {words.common.close}
        </button>
      </div>
      <div className="modal-body reply-letter">
        <label htmlFor={`${id}subject`}>{text.replySubject}</label>
        <input id={`${id}subject`} readOnly value={subject} />
        <label htmlFor={`${id}body`}>{text.replyBody}</label>
        <textarea id={`${id}body`} readOnly rows={16} value={body} />
        <p className="reply-do">
          <button
            type="button"
            className="main"
            data-first-focus
            onClick={() => void navigator.clipboard.writeText(whole).then(() => setDone(text.replyDone))}
          >
            {text.replyCopy}
          </button>
          <button type="button" onClick={() => saveFile(text.replyFile(act.name), whole, 'text/plain')}>
            {text.replySave}
          </button>
          <button type="button" onClick={() => void savePdf()}>
            {text.replyPdf}
          </button>
          <span role="status">{done}</span>
        </p>
      </div>
    </>
  );
}
