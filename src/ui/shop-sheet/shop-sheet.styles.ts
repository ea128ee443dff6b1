import { css } from 'lit';

/** In points and pixels: paper doesn't follow the size of text on the screen. */
export const shopSheetStyles = css`
  :host {
    --dc-paper: #fff;
    --dc-ink: #000;
    --dc-ink-soft: #333;
    --dc-rule: #bbb;
    --dc-rule-strong: #666;
    --dc-text: 10pt;
    --dc-small: 9pt;

    display: block;
    inline-size: 700px;
    margin-inline: auto;
    background: #fff;
    color: #000;
    font-size: 9pt;
    line-height: 12.5pt;
  }

  header {
    display: flex;
    align-items: baseline;
    justify-content: space-between;
    gap: 24px;
    border-block-end: 1.5pt solid #000;
  }

  h1 {
    min-inline-size: 0;
    margin: 0;
    font-size: 15pt;
    font-weight: 600;
    line-height: 20pt;
    overflow-wrap: anywhere;
  }

  .date {
    flex: none;
    margin: 0;
  }

  .sentence {
    margin: 8pt 0 4pt;
    font-size: 12.5pt;
    line-height: 17pt;
    text-wrap: pretty;
  }

  .about,
  .note {
    margin: 0 0 4pt;
    color: #333;
  }

  .note {
    white-space: pre-line;
    overflow-wrap: anywhere;
  }

  h2 {
    margin: 14pt 0 3pt;
    font-size: 11.5pt;
    font-weight: 600;
    line-height: 15pt;
    break-after: avoid;
  }

  .about {
    break-after: avoid;
  }

  .figure {
    break-inside: avoid;
  }

  dc-run-drawing {
    inline-size: 700px;
    block-size: var(--dc-sheet-drawing, 400px);
  }

  dc-operating-plot {
    inline-size: 700px;
    block-size: 300px;
  }

  b {
    font-weight: 600;
  }

  dc-cautions {
    margin-block-start: 16pt;
    padding-block: 8pt 3pt;
    border-block: 1.5pt solid #000;
    font-size: 9pt;
    line-height: 12.5pt;
    break-inside: avoid;
  }

  @media print {
    :host {
      inline-size: auto;
    }

    dc-run-drawing {
      block-size: auto;
    }
  }
`;
