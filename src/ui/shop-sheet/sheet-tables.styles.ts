import { css } from 'lit';

/** How the tables of the sheet look, how wide their columns are, and where they may go on to the next page. */
export const sheetTablesStyles = css`
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

  .total > * {
    border-block-start: 1pt solid #000;
    font-weight: 600;
  }
`;
