import { css } from 'lit';

export const pointsTableStyles = css`
  :host {
    display: block;
    max-inline-size: 26.25rem;
  }

  table {
    inline-size: 100%;
    border-collapse: collapse;
    table-layout: fixed;
  }

  caption {
    padding-block-end: 4px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    text-align: start;
  }

  th {
    padding: 0 8px 0 0;
    font-size: var(--dc-small);
    font-weight: 400;
    line-height: 1.125rem;
    color: var(--dc-ink-soft);
    text-align: start;
    vertical-align: bottom;
  }

  th.narrow,
  td.narrow {
    inline-size: 44px;
    padding: 0;
    text-align: center;
  }

  td {
    padding: 0 8px 2px 0;
    vertical-align: top;
  }

  .add {
    margin-inline-start: -6px;
  }

  td.narrow label {
    display: grid;
    place-items: center;
    min-block-size: 44px;
    cursor: pointer;
  }

  input[type='checkbox'] {
    inline-size: 18px;
    block-size: 18px;
    margin: 0;
    accent-color: var(--dc-ink);
  }

  td.narrow button {
    padding: 0;
    font-size: 1.125rem;
  }

  td.narrow button > span {
    border: 0;
  }

  tr.aside dc-quantity-field {
    color: var(--dc-ink-soft);
  }

  .note {
    padding-block-end: 4px;
  }

  .note button {
    margin-inline-start: -6px;
    margin-inline-end: 12px;
  }

  .remark {
    margin: 0;
    padding-inline-start: 8px;
    border-inline-start: 2px solid var(--dc-duct);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }
`;
