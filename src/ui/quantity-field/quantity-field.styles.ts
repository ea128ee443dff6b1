import { css } from 'lit';

export const quantityFieldStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  .question {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 8px;
    font-size: var(--dc-small);
  }
`;
