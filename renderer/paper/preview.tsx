import { useEffect, useRef, useState } from 'react';
import { words } from '../wording/words.ts';
import { type OpenPdf, openPdf, type PdfPage } from './open-pdf.ts';

export const previewSizes = ['width', 'larger', 'largest'] as const;
export type PreviewSize = (typeof previewSizes)[number];

/** The pages of a PDF as they will come out; each is drawn when it comes near. */
export function Preview({ bytes, size, name }: { bytes: Uint8Array; size: PreviewSize; name: string }) {
  const [pdf, setPdf] = useState<OpenPdf | 'failed' | null>(null);
  useEffect(() => {
    let left = false;
    let open: OpenPdf | null = null;
    openPdf(bytes).then(
      (it) => {
        open = it;
        if (left) it.close();
        else setPdf(it);
      },
      () => left || setPdf('failed'),
    );
    return () => {
      left = true;
      open?.close();
      // The pages of another sheet must not stand under this one's name.
      setPdf(null);
    };
  }, [bytes]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="paper-preview" data-size={size} aria-label={words.paper.preview(name)} tabIndex={0}>
      {pdf === 'failed' && <p role="alert">{words.paper.noPreview}</p>}
      {pdf !== null &&
        pdf !== 'failed' &&
        pdf.pages.map((page) => <Page key={`${page.number} ${size}`} page={page} of={pdf.pages.length} />)}
    </section>
  );
}

function Page({ page, of }: { page: PdfPage; of: number }) {
  const place = useRef<HTMLElement>(null);
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const element = place.current;
    if (!element) return;
    let left = false;
    let made: string | null = null;
    const draw = async () => {
      const pixels = element.clientWidth * window.devicePixelRatio;
      const blob = await page.picture(pixels / page.widthPt);
      if (left) return;
      made = URL.createObjectURL(blob);
      setAddress(made);
    };
    const near = new IntersectionObserver(
      (seen) => {
        if (!seen.some((it) => it.isIntersecting)) return;
        near.disconnect();
        // A page that goes while it is drawn is no trouble.
        draw().catch(() => {});
      },
      { rootMargin: '600px' },
    );
    near.observe(element);
    return () => {
      left = true;
      near.disconnect();
      if (made) URL.revokeObjectURL(made);
    };
  }, [page]);
  return (
    <figure ref={place} className="paper-page" style={{ aspectRatio: `${page.widthPt} / ${page.heightPt}` }}>
      {address && <img src={address} alt={words.paper.page(page.number, of)} />}
    </figure>
  );
}
