// The reader of PDF files in a thread of its own, as a file of the page: the page's policy lets no other run.
import 'pdfjs-dist/legacy/build/pdf.worker.mjs';
