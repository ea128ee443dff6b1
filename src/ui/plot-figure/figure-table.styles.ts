// A table of figures, and the disclosure that it is folded in.

import { css } from 'lit';

export const figureTableStyles = css`
  summary {
    display: inline-flex;
    align-items: center;
    min-block-size: 44px;
    font-size: var(--dc-small);
    cursor: pointer;
    touch-action: manipulation;
  }

  summary::before,
  .fold::before {
    content: '';
    inline-size: 0.375rem;
    block-size: 0.375rem;
    margin-inline: 0.125rem 0.625rem;
    border: solid var(--dc-ink-soft);
    border-width: 0 1.5px 1.5px 0;
    rotate: -45deg;
  }

  .fold::before {
    display: inline-block;
    vertical-align: middle;
  }

  details[open] > summary::before,
  .fold[aria-expanded='true']::before {
    rotate: 45deg;
    translate: 0 -2px;
  }

  .scroll {
    max-inline-size: 100%;
    overflow-x: auto;
  }

  table {
    border-collapse: collapse;
    font-size: var(--dc-small);
    font-variant-numeric: tabular-nums;
    line-height: 1.25rem;
  }

  caption {
    padding-block-end: 4px;
    color: var(--dc-ink-soft);
    text-align: start;
  }

  th,
  td {
    padding: 2px 20px 2px 0;
    border-block-end: 1px solid var(--dc-rule);
    font-weight: 400;
    text-align: end;
    vertical-align: baseline;
    white-space: nowrap;
  }

  th:first-child,
  .words {
    text-align: start;
  }

  th:first-child.words {
    min-inline-size: 15ch;
    white-space: normal;
  }

  /* Where there is little room, words are broken rather than that the table scrolls. */
  @container (max-width: 40em) {
    th,
    td {
      padding-inline-end: 10px;
    }

    th:last-child,
    td:last-child {
      padding-inline-end: 0;
    }

    thead th,
    .words {
      white-space: normal;
    }

    th:first-child.words {
      min-inline-size: 0;
    }
  }

  thead th {
    border-block-end-color: var(--dc-rule-strong);
    vertical-align: bottom;
  }

  .unit {
    display: block;
    color: var(--dc-ink-soft);
  }

  @media print {
    details:not([open]) {
      display: none;
    }

    .scroll {
      overflow: visible;
    }

    tr {
      break-inside: avoid;
    }
  }
`;
