import { useState } from 'react';
import type { Question } from '../../core/rider/reading.ts';
import { words } from '../wording/words.ts';

/** The open questions as a mail to the band, onto the clipboard. */
export function ReplyButton({ actName, questions }: { actName: string; questions: readonly Question[] }) {
  const [isCopied, setCopied] = useState(false);
  const text = words.advance;
  const mail = [
    text.replyHead(actName),
    '',
    text.replyIntro,
    '',
    ...questions.map((question, index) => `${index + 1}. ${question.ask}`),
  ].join('\n');
  return (
    <p className="advance-reply">
      <button
        type="button"
        onClick={() => {
          void navigator.clipboard.writeText(mail).then(() => setCopied(true));
        }}
      >
        {text.reply}
      </button>
      <span role="status">{isCopied ? text.replyDone : ''}</span>
    </p>
  );
}
