import { createPortal } from 'react-dom';
import type { Paper } from '../../core/sheets/paper-request.ts';
import type { PrintPage } from './use-printing.ts';

/** The pages for the printer: beside the program's window, so that nothing of it is printed with them. */
export function PrintPages({ pages, paper }: { pages: readonly PrintPage[]; paper: Paper }) {
  return createPortal(
    <div className="print-pages" aria-hidden>
      {pages.map(({ address, lies }) => (
        <img key={address} src={address} alt="" className={`print-${paper}-${lies ? 'lying' : 'upright'}`} />
      ))}
    </div>,
    document.body,
  );
}
