import { useState } from 'react';
import { type PlanSection, planSections, restoreProposal } from '../../core/plan/restore.ts';
import { Modal } from '../parts/modal.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './restore-dialog.css';

type Section = PlanSection | 'whole act';
const sections: readonly Section[] = [...planSections, 'whole act'];

/** Puts a section of the plan, or all of it, back to the proposal. It says how many decisions go, and asks. */
export function RestoreDialog({ open, onClose }: { open: ActOnScreen; onClose: () => void }) {
  const { change } = useHere();
  const [asked, setAsked] = useState<Section | null>(null);
  const text = words.restore;
  const costs = new Map(sections.map((section) => [section, restoreProposal(open.sheet, section)]));
  const cost = asked && costs.get(asked);
  return (
    <Modal title={text.title} onClose={onClose}>
      <div className="modal-head">
        <h2>{text.title}</h2>
        <button type="button" onClick={onClose}>
          {words.common.close}
        </button>
      </div>
      <div className="modal-body restore">
        {asked && cost ? (
          <>
            <p role="alert">{text.sure(text.sections[asked], cost.decisions)}</p>
            <p className="restore-answers">
              <button
                type="button"
                onClick={() => {
                  change(cost.change);
                  onClose();
                }}
              >
                {text.yes}
              </button>
              {/* biome-ignore lint/a11y/noAutofocus: the safe answer is the one under the Enter key. */}
              <button type="button" className="main" autoFocus onClick={() => setAsked(null)}>
                {text.no}
              </button>
            </p>
          </>
        ) : (
          <>
            <p className="quiet">{text.intro}</p>
            <ul>
              {sections.map((section) => {
                const decisions = costs.get(section)?.decisions ?? 0;
                return (
                  <li key={section}>
                    <span>{text.sections[section]}</span>
                    <span className="quiet">{decisions === 0 ? text.none : text.decisions(decisions)}</span>
                    <button
                      type="button"
                      disabled={decisions === 0}
                      aria-label={text.put(text.sections[section])}
                      onClick={() => setAsked(section)}
                    >
                      {words.common.putBack}
                    </button>
                  </li>
                );
              })}
            </ul>
          </>
        )}
      </div>
    </Modal>
  );
}
