import { css } from 'lit';

export const startShopStyles = css`
  section {
    padding-block: 16px 20px;
    border-block-start: 1px solid var(--dc-rule);
  }

  h2 {
    margin: 0 0 8px;
    font-size: var(--dc-text);
    font-weight: 600;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(17.5rem, 100%), 1fr));
    gap: 12px 16px;
    align-items: start;
  }

  .wide {
    grid-column: 1 / -1;
  }

  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 0 24px;
    margin: 0 0 8px;
    padding: 0;
    border: 0;
  }

  fieldset label {
    display: flex;
    align-items: center;
    gap: 8px;
    min-block-size: 44px;
    cursor: pointer;
  }

  fieldset input {
    inline-size: 1.125rem;
    block-size: 1.125rem;
    margin: 0;
    accent-color: var(--dc-ink);
  }

  .small {
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  .end {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 16px;
  }

  .back {
    margin-inline-start: -6px;
  }

  .end .go {
    padding: 0 20px;
    background: var(--dc-ink);
    color: var(--dc-paper);
    font-size: var(--dc-text);
    border-radius: 2px;
  }

  .go > span {
    border: 0;
  }
`;
