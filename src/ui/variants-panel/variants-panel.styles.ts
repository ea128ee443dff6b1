import { css } from 'lit';

export const variantsPanelStyles = css`
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }

  li {
    padding-block: 8px;
    border-block-end: 1px solid var(--dc-rule);
  }

  dc-text-field {
    display: block;
    max-inline-size: 42rem;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    margin-inline-start: -6px;
  }
`;
