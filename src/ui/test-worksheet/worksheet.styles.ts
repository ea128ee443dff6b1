// What the parts of the worksheet share: groups with a hairline between them, parts that fold, and
// the steps of a reduction as a table.

import { css } from 'lit';

export const worksheetStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  h4 {
    margin: 0;
    font-size: var(--dc-text);
    font-weight: 600;
    line-height: 1.75rem;
  }

  p {
    max-inline-size: 70ch;
  }

  .group {
    padding-block: 8px 16px;
    border-block-end: 1px solid var(--dc-rule);
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 15.5rem), 1fr));
    gap: 8px 24px;
    align-items: start;
    max-inline-size: 60rem;
  }

  .about {
    margin: 0 0 8px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  label.check {
    display: flex;
    align-items: center;
    gap: 8px;
    min-block-size: 44px;
    font-size: var(--dc-small);
    cursor: pointer;
  }

  label.check input {
    inline-size: 18px;
    block-size: 18px;
    margin: 0;
    accent-color: var(--dc-ink);
  }

  details {
    min-inline-size: 0;
  }

  summary {
    inline-size: fit-content;
  }

  details.part > summary {
    font-weight: 600;
  }

  table {
    max-inline-size: 100%;
    border-collapse: collapse;
    font-size: var(--dc-small);
    line-height: 1.125rem;
    font-variant-numeric: tabular-nums;
  }

  th,
  td {
    padding: 4px 12px 4px 0;
    border-block-end: 1px solid var(--dc-rule);
    font-weight: 400;
    text-align: start;
    vertical-align: top;
  }

  td:last-child,
  th:last-child {
    padding-inline-end: 0;
  }

  td.how {
    color: var(--dc-ink-soft);
  }
`;
