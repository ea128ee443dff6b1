import { css } from 'lit';

export const chartTraceStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
    max-inline-size: 1200px;
  }

  .step {
    margin: 8px 0;
    font-weight: 600;
    line-height: 1.5rem;
  }

  .work {
    display: grid;
    grid-template-columns: minmax(0, 3fr) minmax(260px, 2fr);
    gap: 16px 32px;
    align-items: start;
  }

  fieldset {
    display: grid;
    gap: 8px;
    min-inline-size: 0;
    margin: 0 0 16px;
    padding: 0;
    border: 0;
  }

  legend {
    padding: 0;
    font-weight: 600;
    line-height: 1.75rem;
  }

  .nudge {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 4px;
    margin-inline-start: -6px;
    font-size: var(--dc-small);
  }

  .nudge .words {
    margin-inline-start: 6px;
  }

  ol {
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
  }

  li {
    display: grid;
    grid-template-columns: 1.2em 1fr 1.2fr auto auto;
    column-gap: 6px;
    align-items: center;
    white-space: nowrap;
    border-block-end: 1px solid var(--dc-rule);
    font-variant-numeric: tabular-nums;
  }

  li span.end {
    text-align: end;
  }

  .take {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    margin-inline-start: -6px;
  }

  @media (max-width: 56.1875em) {
    .work {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
