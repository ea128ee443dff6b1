import { css } from 'lit';

export const assumptionsPanelStyles = css`
  :host {
    display: block;
  }

  .groups {
    columns: 2 32.5rem;
    column-gap: 40px;
  }

  section {
    margin-block-end: 20px;
  }

  h3 {
    margin: 0 0 4px;
    font-size: var(--dc-small);
    font-weight: 600;
    break-after: avoid;
  }

  ul {
    margin: 0;
    padding: 0;
    border-block-end: 1px solid var(--dc-rule);
    list-style: none;
  }

  li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    column-gap: 16px;
    padding-block: 4px;
    border-block-start: 1px solid var(--dc-rule);
    font-size: var(--dc-small);
    line-height: 1.125rem;
    break-inside: avoid;
  }

  .value {
    font-variant-numeric: tabular-nums;
    text-align: end;
  }

  .source {
    grid-column: 1 / -1;
    color: var(--dc-ink-soft);
  }

  .unsure {
    color: var(--dc-duct);
  }
`;
