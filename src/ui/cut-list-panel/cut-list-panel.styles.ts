import { css } from 'lit';

export const cutListPanelStyles = css`
  .items {
    max-inline-size: 68rem;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .items li {
    display: grid;
    grid-template-columns: minmax(0, 5fr) minmax(0, 4fr) 8.5rem 4.5rem 6rem;
    column-gap: 16px;
    align-items: center;
    padding-block: 2px;
    border-block-start: 1px solid var(--dc-rule);
    line-height: 1.25rem;
  }

  .what,
  .amount,
  .per,
  .cost {
    font-size: var(--dc-small);
    font-variant-numeric: tabular-nums;
  }

  .per {
    color: var(--dc-ink-soft);
  }

  .cost {
    text-align: end;
  }

  h4 {
    margin: 16px 0 4px;
    font-size: var(--dc-small);
    font-weight: 600;
    line-height: 1.25rem;
  }

  .total {
    display: flex;
    justify-content: space-between;
    gap: 16px;
    max-inline-size: 68rem;
    margin: 0;
    padding-block: 10px;
    border-block-start: 2px solid var(--dc-ink);
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .plan {
    max-inline-size: 68rem;
    margin: 0 0 8px;
    padding: 0;
    list-style: none;
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  .plan li {
    padding-block: 4px;
    border-block-start: 1px solid var(--dc-rule);
  }

  .plan b {
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .left {
    color: var(--dc-ink-soft);
  }

  .print {
    margin: 0;
    border: 1px solid var(--dc-rule-strong);
    border-radius: 2px;
    padding-inline: 16px;
    font-size: var(--dc-text);
  }

  .print > span {
    border: 0;
  }

  .print + .about {
    margin-block: 16px 0;
  }

  .print:hover {
    border-color: var(--dc-ink);
  }

  @media (max-width: 47.5em) {
    .items li {
      grid-template-columns: 8.5rem minmax(0, 1fr) auto;
      padding-block: 8px;
    }

    .what,
    .amount {
      grid-column: 1 / -1;
    }

    .amount {
      color: var(--dc-ink-soft);
    }
  }

  @media print {
    .print,
    dc-table-out {
      display: none;
    }
  }
`;
