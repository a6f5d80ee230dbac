/** Number of pages of a PDF: its page objects, which Chromium writes uncompressed. The page tree (`/Type /Pages`) does not count. */
export function pagesOf(pdf: Uint8Array): number {
  return Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1').match(/\/Type\s*\/Page(?![A-Za-z])/g)?.length ?? 0;
}
