// PDF files written byte by byte (ISO 32000-1, 7.5, 8.5 and 8.9.5): pages with lines on them, or with a
// scanned picture, and what can be wrong with them.

/** How the file ends up. */
export interface PdfKind {
  readonly fault?: 'locked' | 'broken';
  /** How often the page is in it [-] */
  readonly pages?: number;
  /** A JPEG that fills the page, under the lines. */
  readonly scan?: { readonly bytes: Uint8Array; readonly width: number; readonly height: number };
}

/** Lines over a page [pt from its lower left], each a list of places. */
export function smallPdf(
  lines: readonly (readonly (readonly [x: number, y: number])[])[],
  { width, height }: { readonly width: number; readonly height: number },
  { fault, pages = 1, scan }: PdfKind = {},
): Uint8Array<ArrayBuffer> {
  const strokes = lines.map(
    (line) => `${line.map(([x, y], i) => `${x} ${y} ${i === 0 ? 'm' : 'l'}`).join(' ')} S`,
  );
  const drawing = [
    ...(scan ? [`q ${width} 0 0 ${height} 0 0 cm /Scan Do Q`] : []),
    ...strokes,
  ].join('\n');
  const used = scan ? '<< /XObject << /Scan 6 0 R >> >>' : '<< >>';
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Kids [${'3 0 R '.repeat(pages)}] /Count ${pages} >>`,
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${width} ${height}] /Contents 4 0 R /Resources ${used} >>`,
    `<< /Length ${drawing.length} >>\nstream\n${drawing}\nendstream`,
    // A password that no text gives: neither check of it comes out.
    `<< /Filter /Standard /V 1 /R 2 /P -4 /O <${'11'.repeat(32)}> /U <${'22'.repeat(32)}> >>`,
    ...(scan ? [scanned(scan)] : []),
  ];
  let text = '%PDF-1.4\n';
  const starts = objects.map((object, i) => {
    const start = text.length;
    text += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return start;
  });
  const table = text.length;
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n`;
  for (const start of starts) text += `${String(start).padStart(10, '0')} 00000 n \n`;
  const lock = fault === 'locked' ? ' /Encrypt 5 0 R /ID [<00> <00>]' : '';
  text += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R${lock} >>\nstartxref\n${table}\n%%EOF\n`;
  return new TextEncoder().encode(fault === 'broken' ? text.slice(0, 60) : text);
}

/** The bytes stand there as hexadecimal digits, so that the file stays text. */
function scanned({ bytes, width, height }: NonNullable<PdfKind['scan']>): string {
  const digits = `${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}>`;
  return `<< /Type /XObject /Subtype /Image /Width ${width} /Height ${height} /ColorSpace /DeviceRGB /BitsPerComponent 8 /Filter [/ASCIIHexDecode /DCTDecode] /Length ${digits.length} >>
stream
${digits}
endstream`;
}
