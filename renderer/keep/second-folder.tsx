import type { CallInput } from '../../core/contract/contract.ts';
import type { CopyPlaces } from '../../core/contract/copies.ts';
import { words } from '../wording/words.ts';
import type { Ask } from './ask.ts';

/**
 * Where back-ups go besides the folder of the show. A path never comes from the page: the system's dialog gives it,
 * or the program has found the drive itself and the page names it by its id.
 */
export function SecondFolder({
  places: { secondFolder, isNamed, drives, hasDialog },
  ask,
  onPlaces,
  onLook,
}: {
  places: CopyPlaces;
  ask: Ask;
  onPlaces: (places: CopyPlaces) => void;
  onLook: () => void;
}) {
  const text = words.keep.copies;
  const choose = async (choice: CallInput<'copies.choose'>['choice']) => {
    const places = await ask('copies.choose', { choice });
    if (places) onPlaces(places);
  };
  const others = drives.filter(({ where }) => !secondFolder?.startsWith(where));
  return (
    <section className="keep-second" aria-label={text.second}>
      <h3>{text.second}</h3>
      <p>{secondFolder === null ? text.noSecond : text.isSecond(secondFolder)}</p>
      {isNamed ? (
        <p className="quiet">{text.isNamed}</p>
      ) : (
        <>
          {!hasDialog && drives.length === 0 && <p className="quiet">{text.noDrive}</p>}
          <p className="keep-row">
            {others.map(({ id, name, where }) => (
              <button key={id} type="button" onClick={() => choose({ how: 'drive', driveId: id })}>
                {text.chooseDrive(name, where)}
              </button>
            ))}
            {hasDialog && (
              <button type="button" onClick={() => choose({ how: 'dialog' })}>
                {text.chooseDialog}
              </button>
            )}
            <button type="button" onClick={onLook}>
              {text.lookAgain}
            </button>
            {secondFolder !== null && (
              <button type="button" onClick={() => choose({ how: 'none' })}>
                {text.noSecondAnyMore}
              </button>
            )}
          </p>
        </>
      )}
    </section>
  );
}
