import { useMemo, useState } from 'react';
import type { BindingId } from '../keys/bindings.ts';
import { FindList } from '../parts/find-list.tsx';
import { Modal } from '../parts/modal.tsx';
import { askArchiveAhead, useFoundInArchive } from '../state/found-in-archive.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { type Findable, findablePast, findables, findByText } from './find-index.ts';

const most = 40;
const mostPast = 20;

/** One box for everything that has a name: in the show, and in the archive of past acts. */
export function FindAnything({ run }: { run: (id: BindingId) => void }) {
  const { show, acts, open, look, connection } = useHere();
  const [text, setText] = useState('');
  const openId = open?.sheet.act.id;
  const all = useMemo(() => {
    const others = acts.map((act) => act.id).filter((id) => id !== openId);
    return findables(show, openId ? [openId, ...others] : others);
  }, [show, acts, openId]);
  const past = useFoundInArchive(text.trim() === '' ? null : text, mostPast);
  const type = (next: string) => {
    askArchiveAhead(connection, next, mostPast);
    setText(next);
  };
  const isAsking = text.trim() !== '' && past?.text !== text;
  const found = useMemo(() => {
    const fromPast = past && text.trim() !== '' ? past.found.map(findablePast) : [];
    return [
      ...findByText(all, text, most),
      // Until the archive has answered to the new letters, what it said before stays as far as it fits them.
      ...(isAsking ? findByText(fromPast, text, mostPast) : fromPast),
    ];
  }, [all, text, past, isAsking]);
  const take = ({ leads }: Findable) => {
    look({ open: 'nothing' });
    if ('look' in leads) look(leads.look);
    else run(leads.run);
  };
  return (
    <Modal title={words.frame.find} onClose={() => look({ open: 'nothing' })}>
      <FindList
        label={words.find.label}
        placeholder={words.find.placeholder}
        listLabel={words.find.results}
        text={text}
        isAsking={isAsking}
        onText={type}
        items={found}
        keyOf={({ key }) => key}
        row={(item) => (
          <>
            <span className="quiet">{words.find.kinds[item.kind]}</span>
            <strong className="cut">{item.name}</strong>
            <span className="quiet cut">{item.place}</span>
          </>
        )}
        onTake={take}
      >
        {found.length === 0 && !isAsking && (
          <p className="modal-body" role="status">
            {words.find.nothing}
          </p>
        )}
      </FindList>
    </Modal>
  );
}
