import { css } from 'lit';

export const variantsPanelStyles = css`
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }

  li {
    display: grid;
    grid-template-columns: minmax(0, 420px) auto;
    justify-content: start;
    align-items: end;
    gap: 0 24px;
    padding-block: 8px;
    border-block-end: 1px solid var(--dc-rule);
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    margin-inline-start: -6px;
  }

  @media (max-width: 44.9375em) {
    li {
      display: block;
    }
  }
`;
