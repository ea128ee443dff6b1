// Reads PDF files apart from the page, so that a long one does not stop it.
import 'pdfjs-dist/legacy/build/pdf.worker.mjs';
