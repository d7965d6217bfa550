declare module '*.css';
/** The address of a file of the page that runs in a thread of its own. */
declare module '*?worker&url' {
  const address: string;
  export default address;
}
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs';
