import { css } from 'lit';

export const gatePlayStyles = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    min-inline-size: 0;
  }

  p {
    margin: 0 6px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
    font-variant-numeric: tabular-nums;
  }

  @media print {
    :host {
      display: none;
    }
  }
`;
