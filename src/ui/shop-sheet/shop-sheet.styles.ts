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

  table {
    inline-size: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }

  thead {
    display: table-header-group;
  }

  tr {
    break-inside: avoid;
  }

  th,
  td {
    padding: 1.5pt 8pt 1.5pt 0;
    border-block-end: 0.5pt solid #bbb;
    font-weight: 400;
    text-align: start;
    vertical-align: baseline;
    overflow-wrap: anywhere;
  }

  th:last-child,
  td:last-child {
    padding-inline-end: 0;
  }

  thead th {
    border-block-end: 1pt solid #000;
    font-weight: 600;
    vertical-align: bottom;
    overflow-wrap: normal;
  }

  .end {
    text-align: end;
    white-space: nowrap;
  }

  /* What a price is for goes below it where both have no room. */
  td.end:has(.unit) {
    white-space: normal;
  }

  .unit {
    color: #333;
    font-weight: 400;
  }

  thead .unit {
    display: block;
  }

  .set {
    padding-block-start: 6pt;
    font-weight: 600;
    break-after: avoid;
  }

  tr:has(.set) {
    break-after: avoid;
  }

  .said {
    padding-block-end: 5pt;
    color: #333;
  }

  .states,
  .cuts,
  .plans,
  .assumed {
    table-layout: fixed;
  }

  /* A short group of rows stays on its page; of a long one never a row or two. */
  .short {
    break-inside: avoid;
  }

  tbody tr:nth-child(-n + 3):not(:last-child) {
    break-after: avoid;
  }

  tbody tr:nth-last-child(-n + 3):not(:first-child) {
    break-before: avoid;
  }

  .states col:nth-child(1) {
    inline-size: 16%;
  }

  .states col:nth-child(n + 2):nth-child(-n + 4) {
    inline-size: 7.5%;
  }

  .states col:nth-child(5) {
    inline-size: 9%;
  }

  .states col:nth-child(6) {
    inline-size: 19%;
  }

  .cuts .what {
    inline-size: 60%;
  }

  .cuts.priced .what {
    inline-size: 44%;
  }

  .cuts.priced .price {
    inline-size: 16%;
  }

  .cuts.priced .cost {
    inline-size: 13%;
  }

  .plans .times {
    inline-size: 9%;
  }

  .plans .left {
    inline-size: 13%;
  }

  .assumed {
    font-size: 8.5pt;
    line-height: 11.5pt;
  }

  .assumed .what {
    inline-size: 29%;
  }

  .assumed .figure-column {
    inline-size: 20%;
  }

  b {
    font-weight: 600;
  }

  .total > * {
    border-block-start: 1pt solid #000;
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
