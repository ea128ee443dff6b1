import { css } from 'lit';

export const pointsTableStyles = css`
  :host {
    display: block;
    max-inline-size: 420px;
  }

  table {
    inline-size: 100%;
    border-collapse: collapse;
  }

  caption {
    padding-block-end: 4px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    text-align: start;
  }

  th {
    padding: 0;
    font-size: var(--dc-small);
    font-weight: 400;
    color: var(--dc-ink-soft);
    text-align: start;
  }

  td {
    padding: 0 8px 4px 0;
    vertical-align: top;
  }

  td:last-child {
    inline-size: 60px;
    padding-inline-end: 0;
  }
`;
