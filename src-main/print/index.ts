export { pagesOf } from './pages-of';
export { openPrinter, pdfOptions } from './printer';
export type { Printer } from './printer';
