import { css } from 'lit';

export const suctionPanelStyles = css`
  label {
    display: flex;
    align-items: center;
    gap: 8px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }

  select {
    min-block-size: 44px;
    max-inline-size: 60vw;
    padding: 0 4px;
    border: 0;
    border-block-end: 1px solid var(--dc-rule-strong);
    border-radius: 0;
    background: var(--dc-paper);
    color: var(--dc-ink);
    font: inherit;
    font-size: var(--dc-text);
  }

  @media print {
    label {
      display: none;
    }
  }
`;
