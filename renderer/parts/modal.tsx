import { type ReactNode, useEffect, useRef } from 'react';
import './modal.css';

/** The browser's own dialog: it holds the focus, closes with Escape and gives the focus back. */
export function Modal({
  title,
  onClose,
  isWide = false,
  children,
}: {
  title: string;
  isWide?: boolean;
  onClose: () => void;
  children: ReactNode;
}) {
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = ref.current;
    const before = document.activeElement;
    dialog?.showModal();
    // The browser would take the first button; where it matters another one is named.
    dialog?.querySelector<HTMLElement>('[data-first-focus]')?.focus();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: a click beside the dialog is a convenience; Escape is its key.
    <dialog
      ref={ref}
      className={isWide ? 'modal is-wide' : 'modal'}
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === ref.current) onClose();
      }}
    >
      <div className="modal-inside">{children}</div>
    </dialog>
  );
}
