import { css } from 'lit';

export const answerTableStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  .caption {
    margin: 8px 0 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  .scroll {
    position: relative;
    max-inline-size: 100%;
    overflow-x: auto;
  }

  table {
    border-collapse: collapse;
    font-size: var(--dc-small);
    font-variant-numeric: tabular-nums;
    line-height: 1.25rem;
  }

  th,
  td {
    /* Narrower where that brings the last buttons into view. */
    padding: 4px clamp(10px, 1.2vw, 16px) 4px 0;
    border-block-end: 1px solid var(--dc-rule);
    font-weight: 400;
    text-align: end;
    white-space: nowrap;
  }

  tbody th,
  tbody td {
    block-size: 36px;
  }

  th:first-child,
  .words {
    text-align: start;
  }

  tfoot td {
    max-inline-size: 20ch;
    vertical-align: top;
    white-space: normal;
  }

  tfoot th {
    vertical-align: top;
  }

  /* Words and names give way where the window is narrow, but short ones take no more than they need. */
  td.words > div,
  .name {
    inline-size: max-content;
    white-space: normal;
  }

  td.words > div {
    max-inline-size: min(var(--dc-words, 44ch), max(17ch, 22vw));
  }

  .name {
    max-inline-size: min(28ch, max(17ch, 20vw));
  }

  thead :is(th, td) {
    border-block-end-color: var(--dc-rule-strong);
  }

  thead th {
    color: var(--dc-ink-soft);
    vertical-align: bottom;
    white-space: normal;
  }

  thead button {
    white-space: nowrap;
    min-block-size: 44px;
    margin-inline: -6px;
    color: inherit;
    text-align: inherit;
    vertical-align: bottom;
  }

  .groups th {
    min-inline-size: 20ch;
    padding-block-start: 8px;
    border: 0;
    color: var(--dc-ink);
    text-align: end;
    white-space: normal;
  }

  .groups td {
    border: 0;
  }

  .unit {
    display: block;
    white-space: nowrap;
    color: var(--dc-ink-soft);
  }

  .arrow {
    display: inline-block;
    inline-size: 0;
    color: var(--dc-ink);
  }

  .mark {
    display: block;
    inline-size: fit-content;
    margin-block: 2px;
    padding-inline: 6px;
    border: 1px solid var(--dc-rule-strong);
    border-radius: 2px;
    color: var(--dc-ink-soft);
    white-space: nowrap;
  }

  tr.marked th,
  tr.marked td {
    font-weight: 600;
  }

  tr.marked .mark,
  tr.marked button {
    font-weight: 400;
  }

  .verdict {
    display: inline-block;
    vertical-align: -3px;
    margin-inline-end: 6px;
  }

  .actions {
    display: flex;
    gap: 0 8px;
  }

  td.take {
    padding-block: 0;
    padding-inline-end: 0;
  }

  @media print {
    .take,
    .actions {
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
