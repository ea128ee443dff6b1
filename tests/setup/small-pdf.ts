// PDF files written byte by byte (ISO 32000-1, 7.5 and 8.5): one page with lines on it, and what can be
// wrong with one.

/** How the file ends up. */
export type PdfKind = 'sound' | 'locked' | 'broken';

/** Lines over a page [pt from its lower left], each a list of places. */
export function smallPdf(
  lines: readonly (readonly (readonly [x: number, y: number])[])[],
  { width, height }: { readonly width: number; readonly height: number },
  kind: PdfKind = 'sound',
): Uint8Array<ArrayBuffer> {
  const drawing = lines
    .map((line) => `${line.map(([x, y], i) => `${x} ${y} ${i === 0 ? 'm' : 'l'}`).join(' ')} S`)
    .join('\n');
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${width} ${height}] /Contents 4 0 R /Resources << >> >>`,
    `<< /Length ${drawing.length} >>\nstream\n${drawing}\nendstream`,
    // A password that no text gives: neither check of it comes out.
    `<< /Filter /Standard /V 1 /R 2 /P -4 /O <${'11'.repeat(32)}> /U <${'22'.repeat(32)}> >>`,
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
  const lock = kind === 'locked' ? ' /Encrypt 5 0 R /ID [<00> <00>]' : '';
  text += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R${lock} >>\nstartxref\n${table}\n%%EOF\n`;
  return new TextEncoder().encode(kind === 'broken' ? text.slice(0, 60) : text);
}
